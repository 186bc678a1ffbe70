using System.Text;
using Materia.Api.Evaluations;
using Materia.Api.Evaluations.Reading;
using Materia.Formulation;

namespace Materia.Api.Tests.Evaluations;

/// <summary>The reading of formulas, without a service.</summary>
public sealed class StrictJsonTests
{
    [Theory]
    [InlineData("""{ "lines": [ { "percent": .5 } ] }""", "/lines/0/percent", "begins with a digit")]
    [InlineData("""{ "lines": [ { "percent": 5, } ] }""", "/lines/0/percent", "Take out the comma")]
    [InlineData("""{ 'lines': [] }""", "", "double quotes")]
    [InlineData("""{ "title": "a" "use": "b" }""", "/title", "A comma or a colon is missing")]
    [InlineData("{ // note\n }", "", "no comments")]
    [InlineData("{\n \"lines\": [\n  { \"percent\": 12,5 }", "/lines/0/percent", "at line 3, byte 19")]
    [InlineData("""{ "a/b~c": tru }""", "/a~1b~0c", "around 'tru }'")]
    [InlineData("""{ "title": "\ud800" }""", "/title", "half of a \\u pair")]
    public void Read_NotJson_PointsAtThePlaceWithAHint(string text, string place, string expected)
    {
        var fault = Read(text).ShouldHaveSingleItem();

        fault.Pointer.ShouldBe(place);
        fault.Message.ShouldContain(expected);
    }

    [Fact]
    public void Read_NestedTooDeep_SaysSo() => Read(new string('[', 5000)).ShouldHaveSingleItem().Message.ShouldContain("more than 64 deep");

    [Fact]
    public void Read_SeveralDifferences_NamesAllOfThem() =>
        Read("""{ "title": 5, "lines": [ { "percent": "x", "balance": "yes" }, null ], "batch": { "jars": 2.5 }, "whip": [] }""").Select(f => f.Pointer)
            .ShouldBe(["/title", "/lines/0/percent", "/lines/0/balance", "/lines/1", "/batch/jars", "/whip"]);

    [Fact]
    public void Read_ThousandsOfDifferences_NamesFifty() =>
        Read($$"""{ "lines": [ {{string.Join(',', Enumerable.Repeat("5", 5000))}} ] }""").Count.ShouldBe(50);

    [Fact]
    public void Read_ByteOrderMark_IsSkipped()
    {
        var (value, faults) = StrictJson.Read<Formula>(Encoding.UTF8.GetBytes("\uFEFF{ \"title\": \"a\" }"), FormulationJson.Options);

        faults.ShouldBeEmpty();
        value.ShouldNotBeNull().Title.ShouldBe("a");
    }

    // A fixed seed keeps the run the same; thirty thousand bodies with one to three bytes changed reach every branch of the reader.
    [Fact]
    public void Read_DamagedBodies_NeverThrowsAndAlwaysAnswers()
    {
        var random = new Random(20261125);
        var whole = Encoding.UTF8.GetBytes(EvaluationExample.Formula);
        byte[] spice = [.. "{}[],:\"\\0123456789.-+eE truefalsn\n\0\u00ff"u8];
        var refused = 0;
        for (var i = 0; i < 30_000; i++)
        {
            byte[] body = [.. whole];
            for (var changes = random.Next(1, 4); changes > 0; changes--)
            {
                body[random.Next(body.Length)] = spice[random.Next(spice.Length)];
            }

            var (value, faults) = StrictJson.Read<Formula>(body.AsMemory(0, random.Next(10) == 0 ? random.Next(body.Length) : body.Length), FormulationJson.Options);
            (value is null).ShouldBe(faults.Count > 0);
            faults.ShouldAllBe(f => f.Message.Length > 10 && (f.Pointer.Length == 0 || f.Pointer[0] == '/'));
            refused += faults.Count > 0 ? 1 : 0;
        }

        refused.ShouldBeGreaterThan(10_000);
    }

    private static IReadOnlyList<FormulaFault> Read(string text)
    {
        var (value, faults) = StrictJson.Read<Formula>(Encoding.UTF8.GetBytes(text), FormulationJson.Options);
        value.ShouldBeNull();
        return faults;
    }
}
