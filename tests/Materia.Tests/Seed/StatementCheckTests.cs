using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>What every statement must satisfy: its source, its grade, its text.</summary>
public sealed class StatementCheckTests : IDisposable
{
    private const string Density60 = "\"typical\": 0.880, \"unit\": \"g/mL\", \"at\": { \"temperature\": 60 }, \"evidence\": \"memory\", \"source\": \"recalled\"";

    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(Butter, "\"source\": \"recalled\", \"checkIn\": \"example-book\"", "\"source\": \"recaled\", \"checkIn\": \"example-book\"", "recaled", "source \"recaled\" does not exist; add sources/recaled.json")]
    [InlineData(Butter, "\"checkIn\": \"example-book\"", "\"checkIn\": \"other-book\"", "other-book", "checkIn \"other-book\" does not exist")]
    [InlineData(Butter, "\"typical\": 25.5, \"evidence\": \"published\", \"source\": \"example-book\"", "\"typical\": 25.5, \"evidence\": \"published\", \"source\": \"exemple\"", "25.5", "source \"exemple\"")]
    [InlineData(Acids, "published,example-book,p. 9,,\n18:0", "published,exemple,p. 9,,\n18:0", "exemple", "source \"exemple\"")]
    [InlineData(Uses, "common-practice,trade-practice,,,\nlip", "common-practice,trade,,,\nlip", "hair-oil", "source \"trade\"")]
    public void Read_UnknownSource_IsReported(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        folder.ShouldReport(file, mark, gist);
    }

    [Fact]
    public void Read_SourceThatNothingNames_IsReported()
    {
        const string Spare = "sources/spare-book.json";
        folder.Write(Spare, folder.Text(Book).Replace("example-book", "spare-book", StringComparison.Ordinal));

        folder.ShouldReport(Spare, "spare-book", "named by nothing");
    }

    [Theory]
    [InlineData("kligman-1996")]
    [InlineData("draelos-dinardo-2006")]
    public void Read_SourceOfTheComedogenicCaveat_CountsAsNamed(string key)
    {
        folder.Write($"sources/{key}.json", folder.Text(Book).Replace("example-book", key, StringComparison.Ordinal));

        Materia.Seed.SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(", \"locator\": \"p. 4\"", "", "melting-range", "published without a locator")]
    [InlineData(Density60, "\"typical\": 0.880, \"unit\": \"g/mL\", \"at\": { \"temperature\": 60 }, \"evidence\": \"memory\", \"source\": \"example-book\"", "0.880", "memory with the source \"example-book\"")]
    [InlineData(Density60, "\"typical\": 0.880, \"unit\": \"g/mL\", \"at\": { \"temperature\": 60 }, \"evidence\": \"secondary\", \"source\": \"recalled\"", "0.880", "secondary with the recollection \"recalled\" as source")]
    [InlineData("\"checkIn\": \"example-book\"", "\"checkIn\": \"trade-practice\"", "beurre", "checkIn \"trade-practice\" is no work that can be opened")]
    public void Read_GradeThatItsSourceDoesNotBear_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Butter, old, replacement);

        folder.ShouldReport(Butter, mark, gist);
    }

    [Fact]
    public void Read_StatementRepeatedWordForWord_IsReported()
    {
        const string Caution = "{ \"text\": \"Patch test it first.\", \"evidence\": \"common-practice\", \"source\": \"trade-practice\" }";
        folder.Edit(Butter, Caution, $"{Caution}, {Caution}");

        folder.ShouldReport(Butter, "Patch test", "the same statement stands here twice");
    }

    [Fact]
    public void Read_AllergenFamilyRepeated_IsReported()
    {
        folder.Edit(Butter, "[ \"tree-nut\" ]", "[ \"tree-nut\", \"tree-nut\" ]");

        folder.ShouldReport(Butter, "tree-nut", "allergen family tree-nut stands twice");
    }

    [Theory]
    [InlineData(Butter, "beurre d'exemple", " beurre", " beurre", "begins or ends with a blank")]
    [InlineData(Butter, "beurre d'exemple", "beurre\u00A0", "beurre", "begins or ends with a blank")]
    [InlineData(Butter, "Patch test it first.", "", "\"text\": \"\"", "an empty text")]
    [InlineData(Butter, "Patch test it first.", "Patch test\\nit first.", "Patch", "line break")]
    [InlineData(Book, "A book of examples", "A book ", "A book ", "begins or ends with a blank")]
    [InlineData(Acids, "palmitic acid", "palmitic acid ", "palmitic", "name \"palmitic acid \" begins or ends with a blank")]
    public void Read_TextWithStrayBlanks_IsReported(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        folder.ShouldReport(file, mark, gist);
    }
}
