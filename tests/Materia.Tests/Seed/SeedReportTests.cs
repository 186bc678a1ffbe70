using System.Globalization;
using System.Text.Json;
using Materia.Catalogue;
using Materia.Seed;
using Materia.Seed.Cli;
using Materia.Seed.Reporting;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>The report on the made-up directory of <see cref="SeedTexts"/>, its statements counted by hand.</summary>
public sealed class SeedReportTests : IDisposable
{
    private readonly SeedFolder folder = new();
    private readonly StringWriter output = new();
    private readonly StringWriter error = new();

    public void Dispose()
    {
        folder.Dispose();
        output.Dispose();
        error.Dispose();
    }

    [Fact]
    public void Of_Figures_CountsGradesAndShares()
    {
        var report = Report();

        // The butter: 2 published and 3 recalled properties, 3 and 3 shares of acids, 3 and 1 of triacylglycerols.
        Counts(report.LipidFigures).ShouldBe((8, 0, 0, 7, 15));
        report.LipidFigures.Sourced.ShouldBe(53.3m);

        // The essential oil adds 2 published and 1 recalled constituents; the blend has no figure.
        Counts(report.Figures).ShouldBe((10, 0, 0, 8, 18));
        report.Figures.Sourced.ShouldBe(55.6m);

        // The blend's two.
        Counts(report.UsageLevels).ShouldBe((0, 0, 1, 1, 2));

        // Besides figures, the butter says 6 published, 3 common and 1 recalled things, the oil 1 common one, and the blend all in
        // all 2 published, 6 common and 4 recalled ones.
        Counts(report.Statements).ShouldBe((18, 0, 10, 13, 41));
        report.Ingredients.ShouldBe(3);
    }

    [Fact]
    public void Of_Measures_SaysHowManyHaveAndLackWhatIsExpected()
    {
        var measures = Report().Measures.ToDictionary(m => (m.Kind, m.Measure), m => (m.Present, m.Missing, m.Grades.Total));

        measures[(IngredientKind.Butter, "melting")].ShouldBe((1, 0, 1));
        measures[(IngredientKind.Butter, "density")].ShouldBe((1, 0, 3));
        measures[(IngredientKind.Butter, "iodine-value")].ShouldBe((0, 1, 0));
        measures[(IngredientKind.Butter, "relative-density")].ShouldBe((1, null, 1));
        measures[(IngredientKind.EssentialOil, "constituents")].ShouldBe((1, 0, 3));
        measures[(IngredientKind.EssentialOil, "label-name")].ShouldBe((0, 1, 0));
        measures[(IngredientKind.Emulsifier, "label-name")].ShouldBe((1, 0, 3));
        measures[(IngredientKind.Emulsifier, "hlb")].ShouldBe((0, 1, 0));
    }

    [Fact]
    public void Of_Conflicts_AreFiguresWithoutACommonValue()
    {
        // Density at 20 Cel is 0.910 in the book and 0.905 in memory; at most 0.5 % of camphor and 0.4 % of it agree.
        var conflict = Report().Conflicts.ShouldHaveSingleItem();

        (conflict.Ingredient, conflict.Subject).ShouldBe(("example-butter", "density at 20 Cel"));
        conflict.Figures.Select(f => (f.Low, f.High, f.Source, f.Used)).ShouldBe([(0.910m, 0.910m, "example-book", true), (0.905m, 0.905m, "recalled", false)]);
    }

    [Theory]
    [InlineData("\"high\": 0.5", "\"low\": 0.45", 2)]
    [InlineData("\"high\": 0.5", "\"high\": 0.39", 2)]
    [InlineData("\"high\": 0.5", "\"low\": 0.4", 1)]
    public void Of_OneEndAlone_IsOpenOnTheOtherSide(string old, string replacement, int conflicts)
    {
        folder.Edit(Oil, old, replacement);

        Report().Conflicts.Count.ShouldBe(conflicts);
    }

    [Fact]
    public void Of_TwoFiguresOfOneSource_AreNoConflict()
    {
        folder.Edit(Butter, "\"typical\": 0.910, \"unit\": \"g/mL\", \"at\": { \"temperature\": 20 }, \"used\": true, \"evidence\": \"published\", \"source\": \"example-book\", \"locator\": \"p. 5\"", "\"typical\": 0.910, \"unit\": \"g/mL\", \"at\": { \"temperature\": 20 }, \"used\": true, \"evidence\": \"memory\", \"source\": \"recalled\"");

        Report().Conflicts.ShouldBeEmpty();
    }

    [Fact]
    public void Of_Gains_AreRankedByClassThenNumberThenKind()
    {
        folder.Edit(Oil, "\"evidence\": \"published\", \"source\": \"example-book\", \"locator\": \"p. 8\" },\n    { \"substance\": \"camphor\", \"high\": 0.5, \"used\": true, \"evidence\": \"published\", \"source\": \"example-book\", \"locator\": \"p. 8\"", "\"evidence\": \"memory\", \"source\": \"recalled\" },\n    { \"substance\": \"camphor\", \"high\": 0.5, \"used\": true, \"evidence\": \"memory\", \"source\": \"recalled\"");

        var gains = Report().Gains;

        gains.Take(6).Select(g => (g.Class, g.Kind, g.Measure)).ShouldBe(
        [
            (2, IngredientKind.EssentialOil, "constituents"),
            (3, IngredientKind.Butter, "required-hlb"),
            (3, IngredientKind.Emulsifier, "hlb"),
            (4, IngredientKind.Butter, "iodine-value"),
            (4, IngredientKind.Butter, "saponification-value"),
            (4, IngredientKind.EssentialOil, "density"),
        ]);
        gains[0].Recalled.ShouldBe(["example-oil"]);
        gains[1].Missing.ShouldBe(["example-butter"]);

        // Part of the label name is published, so it is not from memory only.
        gains.ShouldNotContain(g => g.Kind == IngredientKind.Emulsifier && g.Measure == "label-name");
    }

    [Fact]
    public async Task Run_ReportAsText_AlignsColumnsWhateverTheCulture()
    {
        var culture = CultureInfo.CurrentCulture;
        var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        try
        {
            CultureInfo.CurrentCulture = commas;
            (await Run("report", folder.Root)).ShouldBe(ExitCode.Done);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }

        var text = output.ToString();
        text.ShouldContain(
            """
            kind           ingredients  figures  published  secondary  common-practice  memory  sourced %
            butter                   1       15          8          0                0       7       53.3
            essential-oil            1        3          2          0                0       1       66.7
            emulsifier               1        0          0          0                0       0          -

            """);
        text.ShouldContain(
            """
            Conflicts between sources (no value in common): 1
            ingredient      figure               low   high  source        grade      used
            example-butter  density at 20 Cel  0.910  0.910  example-book  published  used
            example-butter  density at 20 Cel  0.905  0.905  recalled      memory

            """);
    }

    [Fact]
    public async Task Run_ReportAsJson_HoldsTheSame()
    {
        (await Run("report", folder.Root, "--format", "json")).ShouldBe(ExitCode.Done);

        using var json = JsonDocument.Parse(output.ToString());
        json.RootElement.GetProperty("lipidFigures").GetProperty("sourced").GetDecimal().ShouldBe(53.3m);
        json.RootElement.GetProperty("kinds")[0].GetProperty("kind").GetString().ShouldBe("butter");
        json.RootElement.GetProperty("usageLevels").GetProperty("published").GetInt32().ShouldBe(0);
    }

    [Theory]
    [InlineData("--format needs text or json", "report", "--format", "xml")]
    [InlineData("--format needs text or json", "report", "--format")]
    [InlineData("--format belongs to report", "check", "--format", "json")]
    public async Task Run_FormatNotUnderstood_SaysWhy(string gist, params string[] args)
    {
        (await Run(args)).ShouldBe(ExitCode.Usage);

        error.ToString().ShouldContain(gist);
    }

    [Fact]
    public async Task Run_ReportOnDataWithFaults_GivesTheFaultsInstead()
    {
        folder.Edit(Butter, "8001-79-4", "8001-79-5");

        (await Run("report", folder.Root)).ShouldBe(ExitCode.Faults);

        error.ToString().ShouldContain("CAS number");
        output.ToString().ShouldBe($"1 fault{Environment.NewLine}");
    }

    private static (int, int, int, int, int) Counts(GradeCounts counts) =>
        (counts.Published, counts.Secondary, counts.CommonPractice, counts.Memory, counts.Total);

    private CatalogueReport Report() => CatalogueReport.Of(SeedReader.Read(folder.Root).Content.ShouldNotBeNull());

    private Task<int> Run(params string[] args) => SeedCommand.RunAsync(args, output, error, TestContext.Current.CancellationToken);
}
