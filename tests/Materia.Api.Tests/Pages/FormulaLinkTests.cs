using System.Buffers.Text;
using System.IO.Compression;
using System.Text.Json;
using Materia.Api.Pages.Formulas;
using Materia.Formulation;

namespace Materia.Api.Tests.Pages;

/// <summary>Formulas in addresses: what is written is read, and nothing else does harm.</summary>
public sealed class FormulaLinkTests
{
    [Fact]
    public void Decode_OfEncode_IsTheSameFormula()
    {
        foreach (var formula in ExampleFormulas.All)
        {
            var (read, faults) = FormulaLink.Decode(FormulaLink.Encode(formula));

            faults.ShouldBeEmpty();
            JsonSerializer.Serialize(read, FormulationJson.Options).ShouldBe(JsonSerializer.Serialize(formula, FormulationJson.Options));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("1.")]
    [InlineData("2.q1Y")]
    [InlineData("1.zzz")]
    [InlineData("1.%%%")]
    [InlineData("1.AAAA")]
    [InlineData("\0")]
    public void Decode_OfSomethingElse_SaysSoInOneSentence(string text)
    {
        var (formula, faults) = FormulaLink.Decode(text);

        formula.ShouldBeNull();
        faults.Single().Message.ShouldContain("link");
    }

    [Fact]
    public void Decode_OfABomb_StopsAtTheBound()
    {
        // A hundred times the bound, packed to a thousandth: deflate shrinks a run of one letter about 1000-fold.
        var (formula, faults) = FormulaLink.Decode("1." + Packed(new string(' ', 100 * FormulaLink.LargestJson / 20)));

        formula.ShouldBeNull();
        faults.Single().Message.ShouldContain("not whole");
    }

    [Fact]
    public void Decode_OfAnUnknownMember_PointsAtIt()
    {
        var (formula, faults) = FormulaLink.Decode("1." + Packed("""{ "lines": [ { "ingredent": "shea-butter" } ] }"""));

        formula.ShouldBeNull();
        faults.Single().Pointer.ShouldBe("/lines/0/ingredent");
    }

    [Fact]
    public void Encode_OfTheLongestFormula_StaysWithinTheBound()
    {
        // 200 lines of the 200 longest distinct ids would be the worst; ids made from numbers pack as badly.
        var formula = new Formula { Lines = [.. Enumerable.Range(0, NormalisedFormula.MostLines).Select(i => new FormulaLine { Ingredient = $"ingredient-{i * 7919 % 9973}-oil", Percent = 0.5m })] };

        FormulaLink.Encode(formula).Length.ShouldBeLessThan(FormulaLink.LongestText);
    }

    private static string Packed(string json)
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            deflate.Write(System.Text.Encoding.UTF8.GetBytes(json));
        }

        return Base64Url.EncodeToString(packed.ToArray());
    }
}
