using Materia.Seed;
using static Materia.Tests.Seed.SeedBlendTexts;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>What is said about working with an ingredient: description, usage levels, handling, effects.</summary>
public sealed class WorkingCheckTests : IDisposable
{
    private const string Description = "A blend of examples that stands in for any mixture. It is made up.";

    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("\"use\": \"lip-balm\"", "\"use\": \"lip-gloss\"", "lip-gloss", "use \"lip-gloss\" is not in tables/uses.csv")]
    [InlineData("\"use\": \"hair-oil-leave-on\"", "\"use\": \"lip-balm\"", "\"high\": 1", "use \"lip-balm\" stands twice")]
    [InlineData("\"low\": 2,", "\"low\": 6,", "lip-balm", "low 6, typical 5, high 8 do not rise")]
    [InlineData("\"high\": 1, ", "", "hair-oil-leave-on", "neither low nor typical nor high")]
    [InlineData("\"high\": 1,", "\"high\": 101,", "hair-oil-leave-on", "101 is outside 0 to 100")]
    [InlineData("\"phase\": \"melt\", ", "", "\"topic\": \"phase\"", "a note on the phase that names none; add \"phase\", one of melt, oil, water, cool-down, powder")]
    [InlineData("\"topic\": \"storage\"", "\"topic\": \"storage\", \"phase\": \"oil\"", "storage", "\"phase\" on a note on storage")]
    [InlineData("\"topic\": \"storage\"", "\"topic\": \"phase\", \"phase\": \"oil\"", "\"oil\"", "a second note on the phase")]
    [InlineData("\"phase\": \"melt\"", "\"phase\": \"heat\"", "\"heat\"", "write one of melt, oil, water")]
    [InlineData("\"charge\": \"nonionic\"", "\"charge\": \"none\"", "\"none\"", "write one of nonionic, anionic")]
    [InlineData("\"subject\": \"hair\"", "\"subject\": \"beard\"", "beard", "write one of hair, scalp")]
    [InlineData("Keep it cool and dry.", "Keep it cool and dry", "storage", "\"…Keep it cool and dry\" does not end with a full stop")]
    [InlineData("It holds best.", "It holds best", "example-group", "does not end with a full stop")]
    [InlineData("when combed.", "when combed", "Tresses", "does not end with a full stop")]
    [InlineData("It is made up.", "It is made up", "\"description\"", "does not end with a full stop")]
    [InlineData(Description, "A blend of examples, and it is made up.", "\"description\"", "a description of 39 characters, not of 40 to 900")]
    [InlineData(Description, " A blend of examples that stands in for any mixture.", "\"description\"", "begins or ends with a blank")]
    public void Read_WrongStatement_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Blend, old, replacement);

        folder.ShouldReport(Blend, mark, gist);
    }

    [Theory]
    [InlineData(900, true)]
    [InlineData(901, false)]
    public void Read_LongDescription_IsReportedAboveTheBound(int length, bool accepted)
    {
        folder.Edit(Blend, Description, Description.PadLeft(length, 'A'));

        (SeedReader.Read(folder.Root).Faults.Count == 0).ShouldBe(accepted);
    }

    [Theory]
    [InlineData("\"description\"", "common-practice", "published", "published without a locator")]
    [InlineData("\"charge\"", "trade-practice", "recalled", "common-practice with the recollection \"recalled\" as source")]
    [InlineData("\"Cetyl Alcohol\"", "recalled", "example-book", "memory with the source \"example-book\"")]
    [InlineData("\"lip-balm\"", "trade-practice", "trade", "source \"trade\" does not exist")]
    [InlineData("\"storage\"", "\"recalled\"", "\"recalled\", \"checkIn\": \"other-book\"", "checkIn \"other-book\" does not exist")]
    [InlineData("\"example-group\"", "common-practice", "published", "published without a locator")]
    [InlineData("\"Tresses", ", \"locator\": \"p. 21\"", "", "published without a locator")]
    public void Read_GradeOrSourceThatCannotBe_IsReported(string mark, string old, string replacement, string gist)
    {
        var line = folder.Text(Blend).Split('\n')[folder.Line(Blend, mark) - 1];
        folder.Edit(Blend, line, line.Replace(old, replacement, StringComparison.Ordinal));

        folder.ShouldReport(Blend, mark, gist);
    }

    [Fact]
    public void Read_NoteRepeatedWordForWord_IsReported()
    {
        const string Note = """{ "topic": "storage", "text": "Keep it cool and dry.", "evidence": "memory", "source": "recalled" }""";
        folder.Edit(Blend, Note, $"{Note}, {Note}");

        folder.ShouldReport(Blend, "storage", "the same statement stands here twice");
    }

    [Fact]
    public void Read_UseWhoseRowCouldNotBeRead_IsNotCalledUnknown()
    {
        folder.Edit(Uses, "leave-on,lips", "leave-on,lip");

        SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem().File.ShouldBe(Uses);
    }

    [Fact]
    public void Read_DescriptionOfAUseWithoutFullStop_IsReported()
    {
        folder.Edit(Uses, "Stays on the lips.", "Stays on the lips");

        folder.ShouldReport(Uses, "lip-balm", "does not end with a full stop");
    }
}
