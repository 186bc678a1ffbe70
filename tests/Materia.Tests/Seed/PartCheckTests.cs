using Materia.Seed;
using static Materia.Tests.Seed.SeedBlendTexts;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>Parts of mixtures.</summary>
public sealed class PartCheckTests : IDisposable
{
    private const string Shares = "\"low\": 20, \"typical\": 29, \"high\": 35";

    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("36653-82-4", "36653-82-5", "Cetyl Alcohol", "CAS number \"36653-82-5\" is wrong")]
    [InlineData("\"ingredient\": \"example-butter\"", "\"ingredient\": \"other-butter\"", "other-butter", "ingredient \"other-butter\" does not exist")]
    [InlineData("\"ingredient\": \"example-butter\"", "\"ingredient\": \"example-blend\"", "Exemplum Vulgare", "example-blend is named as a part of itself")]
    [InlineData("\"cas\": \"36653-82-4\"", "\"ingredient\": \"example-butter\"", "Cetyl Alcohol", "ingredient \"example-butter\" is two parts")]
    [InlineData("Cetyl Alcohol", "EXEMPLUM Vulgare Seed Butter", "EXEMPLUM", "part \"EXEMPLUM Vulgare Seed Butter\" stands twice")]
    [InlineData("\"typical\": 29, \"high\": 35", "\"typical\": 29, \"high\": 28", "Cetyl Alcohol", "low 20, typical 29, high 28 do not rise")]
    [InlineData("\"high\": 35", "\"high\": 350", "Cetyl Alcohol", "350 is outside 0 to 100")]
    [InlineData("\"typical\": 29", "\"typical\": 26.9", "\"parts\"", "the usual shares of the parts add up to 96.9 %, not to 97 to 103 %")]
    [InlineData("\"typical\": 29", "\"typical\": 33.1", "\"parts\"", "add up to 103.1 %")]
    [InlineData(Shares, "\"low\": 40.1, \"high\": 45", "\"parts\"", "the least shares of the parts add up to 100.1 %")]
    [InlineData(Shares, "\"low\": 19, \"high\": 19.9", "\"parts\"", "the greatest shares of the parts add up to 99.9 %")]
    [InlineData("\"Exemplum Blend\"", "\"Exemplum (and) Blend\"", "(and)", "joins several INCI names")]
    public void Read_WrongPart_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Blend, old, replacement);

        folder.ShouldReport(Blend, mark, gist);
    }

    [Theory]
    [InlineData("\"typical\": 29", "\"typical\": 27")]
    [InlineData("\"typical\": 29", "\"typical\": 33")]
    [InlineData(Shares + ", ", "")]
    [InlineData(Shares, "\"low\": 40, \"high\": 45")]
    [InlineData(Shares, "\"high\": 20")]
    public void Read_SharesAtTheBoundsOrUnknown_AreAccepted(string old, string replacement)
    {
        folder.Edit(Blend, old, replacement);

        SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }

    [Fact]
    public void Read_SinglePart_IsReported()
    {
        var second = folder.Text(Blend).Split('\n')[folder.Line(Blend, "Cetyl Alcohol") - 1];
        folder.Edit(Blend, $",\n{second}", "");
        folder.Edit(Blend, "\"low\": 60, \"typical\": 70, \"high\": 80, ", "");

        folder.ShouldReport(Blend, "Exemplum Vulgare", "a single part makes no mixture");
    }

    [Fact]
    public void Read_MixtureThatHoldsItselfOverAnother_NamesTheWayRound()
    {
        const string Part = """{ "inciName": "A", "ingredient": "example-blend", "evidence": "memory", "source": "recalled" }, { "inciName": "B", "evidence": "memory", "source": "recalled" }""";
        folder.Edit(Butter, "  \"substitutionGroups\": [", $"  \"parts\": [ {Part} ],\n  \"substitutionGroups\": [");

        folder.ShouldReport(Blend, "Exemplum Vulgare", "example-butter holds example-blend holds example-butter: a mixture cannot be a part of itself");
    }

    [Fact]
    public void Read_PartThatCouldNotBeRead_IsNotCalledUnknown()
    {
        folder.Edit(Butter, "\"kind\": \"butter\"", "\"kind\": \"buter\"");

        SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem().File.ShouldBe(Butter);
    }
}
