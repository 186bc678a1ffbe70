using Materia.Seed;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>Figures, constituents, grades and marks.</summary>
public sealed class FigureCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("\"unit\": \"Cel\"", "\"unit\": \"degC\"", "degC", "unit \"degC\" does not fit melting-range; convert the figure to Cel")]
    [InlineData("\"low\": 30, \"typical\": 33.5", "\"low\": 34, \"typical\": 33.5", "melting-range", "low 34, typical 33.5, high 37 do not rise")]
    [InlineData("\"typical\": 33.5, \"high\": 37", "\"typical\": 38, \"high\": 37", "melting-range", "low 30, typical 38, high 37 do not rise")]
    [InlineData("\"low\": 30, \"typical\": 33.5", "\"low\": 38", "melting-range", "low 38, typical absent, high 37 do not rise")]
    [InlineData("\"low\": 30, \"typical\": 33.5, \"high\": 37, ", "", "melting-range", "neither low nor typical nor high")]
    [InlineData("\"high\": 37", "\"high\": 370", "melting-range", "370 is outside -80 to 200, the plausible band of melting-range [Cel]")]
    [InlineData("\"typical\": 0.880", "\"typical\": 0.088", "0.088", "0.088 is outside 0.6 to 7")]
    [InlineData("{ \"temperature\": 60 }", "{ }", "0.880", "\"at\" is empty")]
    [InlineData("{ \"temperature\": 60 }", "{ \"temperature\": 60, \"waterTemperature\": 4 }", "0.880", "waterTemperature belongs to relative-density")]
    [InlineData("\"high\": 2, \"irritancy\"", "\"high\": 6, \"irritancy\"", "the butter", "6 is outside 0 to 5, the scale of the assay")]
    [InlineData("\"low\": 0, \"high\": 2", "\"low\": 3, \"high\": 2", "the butter", "do not rise")]
    [InlineData("\"irritancy\": 1", "\"irritancy\": -1", "the butter", "-1 is outside 0 to 5")]
    public void Read_WrongFigure_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Butter, old, replacement);

        folder.ShouldReport(Butter, mark, gist);
    }

    [Theory]
    [InlineData("\"low\": 25", "\"low\": 36", "linalool", "do not rise")]
    [InlineData("\"high\": 45", "\"high\": 450", "linalool", "450 is outside 0 to 100, the bounds of a percentage")]
    [InlineData("\"low\": 25", "\"low\": -1", "linalool", "-1 is outside 0 to 100")]
    [InlineData("\"high\": 0.5, ", "", "camphor", "neither low nor typical nor high")]
    [InlineData("\"substance\": \"linalool\", \"cas\": \"78-70-6\", \"low\": 25, \"typical\": 35, \"high\": 45", "\"substance\": \"linalool\", \"low\": 100, \"typical\": 100 }, { \"substance\": \"borneol\", \"low\": 0.6", "\"constituents\"", "the least shares of the constituents add up to 100.6 %")]
    public void Read_WrongConstituent_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Oil, old, replacement.Replace("\"typical\": 100 }", "\"typical\": 100, \"evidence\": \"memory\", \"source\": \"recalled\" }", StringComparison.Ordinal));

        folder.ShouldReport(Oil, mark, gist);
    }

    [Theory]
    [InlineData(Butter, ", \"used\": true", "", "0.910", "2 statements of density at 20 Cel and none is marked used")]
    [InlineData(Butter, "{ \"temperature\": 20.0 }", "{ \"temperature\": 20.0 }, \"used\": true", "20.0", "a second statement of density at 20")]
    [InlineData(Butter, "{ \"temperature\": 60 }", "{ \"temperature\": 60 }, \"used\": true", "0.880", "density at 60 Cel stands alone and is marked used")]
    [InlineData(Butter, "\"of\": \"alcohols\"", "\"of\": \"alcohols\", \"used\": true", "alcohols of the sample", "samples of the alcohols stands alone")]
    [InlineData(Butter, "\"kind\": \"range\"", "\"kind\": \"range\", \"used\": true", "ranges of a standard", "a range profile is marked used")]
    [InlineData(Oil, ", \"used\": true", "", "camphor", "2 statements of camphor and none is marked used")]
    [InlineData(Oil, "\"high\": 45", "\"high\": 45, \"used\": true", "linalool", "linalool stands alone and is marked used")]
    public void Read_WrongMark_IsReported(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        var fault = SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem();
        fault.File.ShouldBe(file);
        fault.Message.ShouldContain(gist);

        // A profile opens with a brace on the line above its label.
        var line = folder.Line(file, mark);
        fault.Line.ShouldBe(folder.Text(file).Split('\n')[line - 1].Contains("\"label\"", StringComparison.Ordinal) ? line - 1 : line);
    }

    [Fact]
    public void Read_TwoSamplesOfOnePart_AskForOneMark()
    {
        folder.Edit(Butter, "      \"of\": \"alcohols\",\n", "");
        folder.Edit(Butter, "16:0-ol", "16:0");

        folder.ShouldReport(Butter, "    {\n", "2 statements of samples of the acids and none is marked used");
    }
}
