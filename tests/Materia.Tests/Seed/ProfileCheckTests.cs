using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>Fatty-acid profiles.</summary>
public sealed class ProfileCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("\"acid\": \"18:0\"", "\"acid\": \"18:9\"", "18:9", "acid \"18:9\" is not in tables/fatty-acids.csv")]
    [InlineData("\"acid\": \"18:0\"", "\"acid\": \"16:0\"", "\"typical\": 34", "acid \"16:0\" stands twice")]
    [InlineData("\"acid\": \"18:0\"", "\"acid\": \"16:0-ol\"", "\"typical\": 34", "\"16:0-ol\" is an alcohol in a profile of acids")]
    [InlineData("\"acid\": \"16:0-ol\"", "\"acid\": \"16:0\"", "\"typical\": 99", "\"16:0\" is an acid in a profile of alcohols")]
    [InlineData("\"typical\": 34, ", "", "18:0", "neither low nor typical nor high")]
    [InlineData("\"low\": 20", "\"low\": 31", "\"low\": 31", "low 31, typical absent, high 30 do not rise")]
    [InlineData("\"high\": 45", "\"high\": 145", "\"high\": 145", "145 is outside 0 to 100")]
    public void Read_WrongShare_IsReported(string old, string replacement, string mark, string gist)
    {
        // 34 of 99.5 % may go missing with the share that is broken; that the sum is noticed too is another test's business.
        folder.Edit(Butter, old, replacement);

        Materia.Seed.SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == Butter && f.Line == folder.Line(Butter, mark) && f.Message.Contains(gist, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"typical\": 34", "\"typical\": 31.4", "one sample", "the shares of the sample add up to 96.9 %, not to 97 to 100.5 %")]
    [InlineData("\"typical\": 34", "\"typical\": 35.1", "one sample", "add up to 100.6 %")]
    [InlineData("\"typical\": 99", "\"typical\": 96.9", "alcohols of the sample", "add up to 96.9 %")]
    [InlineData("\"low\": 20, \"high\": 30", "\"low\": 66, \"high\": 70", "ranges of a standard", "the low ends of the ranges add up to 101 %")]
    public void Read_SumThatCannotBe_IsReportedWhereTheProfileBegins(string old, string replacement, string label, string gist)
    {
        folder.Edit(Butter, old, replacement);

        // The profile's brace and its label, in one mark.
        folder.ShouldReport(Butter, $"{{\n      \"label\": \"{label}\"", gist);
    }

    [Fact]
    public void Read_ProfileWithoutShares_IsReported()
    {
        var text = folder.Text(Butter);
        var shares = text[text.IndexOf("        { \"acid\": \"16:0\", \"low\"", StringComparison.Ordinal)..];
        folder.Edit(Butter, shares[..shares.IndexOf("      ]", StringComparison.Ordinal)], "");

        folder.ShouldReport(Butter, "{\n      \"label\": \"ranges", "the profile has no shares");
    }

    [Theory]
    [InlineData("31.5")]
    [InlineData("35")]
    public void Read_SumAtTheBounds_IsAccepted(string stearic)
    {
        folder.Edit(Butter, "\"typical\": 34", $"\"typical\": {stearic}");

        Materia.Seed.SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("\"typical\": 34", "\"low\": 33, \"high\": 35")]
    [InlineData("\"typical\": 34", "\"low\": 33, \"typical\": 34, \"high\": 39")]
    public void Read_SampleWithRanges_AddsUpTypicalOrMiddle(string old, string replacement)
    {
        folder.Edit(Butter, old, replacement);

        Materia.Seed.SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }
}
