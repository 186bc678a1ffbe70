using Materia.Seed;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>Compositions by triacylglycerol.</summary>
public sealed class TriacylglycerolCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("\"SOS\"", "\"SOX\"", "60.4", "species \"SOX\" is not three known chains; write each as one of Cy, C, La, M, P, S, A, B, Po, O, E, L, Ln")]
    [InlineData("\"SOS\"", "\"SO\"", "60.4", "species \"SO\" is not three known chains")]
    [InlineData("\"SOS\"", "\"SOSO\"", "60.4", "species \"SOSO\" is not three known chains")]
    [InlineData("\"SOS\"", "\"sos\"", "60.4", "species \"sos\" is not three known chains")]
    [InlineData("\"SLO+OOO\"", "\"SLO+\"", "printed as one", "species \"SLO+\" is not three known chains")]
    [InlineData("\"LaMP\"", "\"SOS\"", "\"typical\": 32", "species \"SOS\" stands twice in the profile")]
    [InlineData("\"LaMP\"", "\"OLS\"", "printed as one", "species \"OLS\" stands twice in the profile, mirror images counted as one")]
    [InlineData("\"SLO+OOO\"", "\"OOO+OOO\"", "printed as one", "species \"OOO\" stands twice in the profile")]
    [InlineData("\"typical\": 41.6", "\"low\": 2, \"high\": 1", "SOP", "low 2, typical absent, high 1 do not rise")]
    [InlineData("\"typical\": 41.6", "\"high\": 100.1", "SOP", "100.1 is outside 0 to 100, the bounds of a percentage")]
    [InlineData("\"typical\": 41.6, ", "", "SOP", "neither low nor typical nor high")]
    [InlineData("\"typical\": 41.6, \"evidence\": \"memory\", \"source\": \"recalled\"", "\"typical\": 41.6, \"evidence\": \"memory\", \"source\": \"recaled\"", "SOP", "source \"recaled\" does not exist")]
    [InlineData("\"SOP\", \"typical\": 41.6, \"evidence\": \"memory\"", "\"SOP\", \"typical\": 41.6, \"evidence\": \"secondary\"", "SOP", "secondary with the recollection \"recalled\" as source")]
    public void Read_WrongShare_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Butter, old, replacement);

        folder.ShouldReport(Butter, mark, gist);
    }

    /// <summary>60.4 + 32 + 8: a range without a typical share adds its lower end.</summary>
    [Theory]
    [InlineData("60.6", "the shares add up to 100.6 %, more than 100.5 %")]
    [InlineData("99", "the shares add up to 139 %")]
    public void Read_SumThatCannotBe_IsReportedWhereTheProfileBegins(string share, string gist)
    {
        folder.Edit(Butter, "60.4", share);

        folder.ShouldReport(Butter, "{\n      \"label\": \"a whole analysis\"", gist);
    }

    [Theory]
    [InlineData("60.5")]
    [InlineData("0.5")]
    public void Read_SumAtTheBoundOrFarBelow_IsAccepted(string share)
    {
        folder.Edit(Butter, "60.4", share);

        SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }

    [Fact]
    public void Read_ProfileWithoutShares_IsReported()
    {
        folder.Edit(Butter, "        { \"species\": \"SOP\", \"typical\": 41.6, \"evidence\": \"memory\", \"source\": \"recalled\" }\n", "");

        folder.ShouldReport(Butter, "{\n      \"label\": \"the main species of another\"", "the profile has no shares");
    }

    [Theory]
    [InlineData("      \"used\": true,\n      \"shares\"", "      \"shares\"", "a whole analysis", "2 statements of the composition by triacylglycerol and none is marked used")]
    [InlineData("\"label\": \"the main species of another\"", "\"label\": \"the main species of another\", \"used\": true", "the main species", "a second statement of the composition by triacylglycerol is marked used")]
    public void Read_WrongMark_IsReported(string old, string replacement, string label, string gist)
    {
        folder.Edit(Butter, old, replacement);

        folder.ShouldReport(Butter, $"{{\n      \"label\": \"{label}", gist);
    }

    [Fact]
    public void Read_OneProfileThatIsMarked_IsReported()
    {
        var text = folder.Text(Butter);
        var second = text[text.IndexOf(",\n    {\n      \"label\": \"the main species", StringComparison.Ordinal)..];
        folder.Edit(Butter, second[..second.IndexOf("\n  ],", StringComparison.Ordinal)], "");

        folder.ShouldReport(Butter, "{\n      \"label\": \"a whole analysis\"", "stands alone and is marked used");
    }
}
