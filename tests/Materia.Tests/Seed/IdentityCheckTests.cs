using Materia.Seed;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>Ids, registry numbers and names.</summary>
public sealed class IdentityCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(Butter, "\"id\": \"example-butter\"", "\"id\": \"exemplar-butter\"", "exemplar", "call the file exemplar-butter.json")]
    [InlineData(Butter, "\"kind\": \"butter\"", "\"kind\": \"oil\"", "\"kind\": \"oil\"", "move the file to ingredients/oil")]
    [InlineData(Butter, "\"skin-conditioning\"", "\"Skin conditioning\"", "Skin conditioning", "not in kebab case")]
    [InlineData(Butter, "old-butter", "Old-butter", "Old-butter", "not in kebab case")]
    [InlineData(Butter, "old-butter", "example-oil", "formerIds", "\"example-oil\" is the present id of an ingredient")]
    [InlineData(Butter, "\"older-butter\"", "\"old-butter\"", "formerIds", "\"old-butter\" is one of example-butter too")]
    [InlineData(Uses, "lip-balm", "Lip_balm", "Lip_balm", "not in kebab case")]
    [InlineData(Uses, "lip-balm", "hair-oil-leave-on", "Lip balm", "id \"hair-oil-leave-on\" stands in line 2 too")]
    [InlineData(Uses, "lip-balm", "", "Lip balm", "id is empty")]
    [InlineData(Acids, "18:0,stearic", "16:0,stearic", "stearic", "symbol \"16:0\" stands in line 2 too")]
    public void Read_WrongId_IsReported(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == file && f.Line == folder.Line(file, mark) && f.Message.Contains(gist, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_IdGivenTwice_NamesBothFiles()
    {
        const string Other = "ingredients/oil/example-oil.json";
        var text = folder.Text(Oil)
            .Replace("essential-oil", "oil", StringComparison.Ordinal)
            .Replace("Example oil", "Other oil", StringComparison.Ordinal);
        folder.Write(Other, text);

        folder.ShouldReport(Other, "\"id\"", $"id \"example-oil\" is that of {Oil} too");
    }

    [Theory]
    [InlineData("ingredients/example-oil.json", Oil, "the file belongs in ingredients/<kind>")]
    [InlineData("sources/books/example-book.json", Book, "the file belongs in sources")]
    public void Read_FileInWrongFolder_IsReported(string to, string from, string gist)
    {
        folder.Write(to, folder.Text(from));
        folder.Delete(from);

        folder.ShouldReport(to, "\"id\"", gist);
    }

    [Theory]
    [InlineData(Butter, "8001-79-4", "8001-79-5", "8001-79-5", "CAS number \"8001-79-5\" is wrong")]
    [InlineData(Butter, "232-293-8", "232-293-3", "232-293-3", "EC number \"232-293-3\" is wrong")]
    [InlineData(Oil, "78-70-6", "78-07-6", "78-07-6", "CAS number \"78-07-6\" is wrong")]
    [InlineData(Acids, "57-11-4", "57-11-5", "57-11-5", "CAS number \"57-11-5\" is wrong")]
    public void Read_WrongCheckDigit_IsReported(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        folder.ShouldReport(file, mark, gist);
    }

    [Theory]
    [InlineData("\"kind\": \"common\"", "\"kind\": \"synonym\"", "\"names\"", "no common name")]
    [InlineData("\"kind\": \"synonym\", \"language\": \"fr\"", "\"kind\": \"common\", \"language\": \"fr\"", "beurre", "a second common name")]
    [InlineData("\"language\": \"fr\"", "\"language\": \"french\"", "french", "language \"french\" is no BCP 47 tag")]
    [InlineData("\"language\": \"fr\"", "\"language\": \"fr_FR\"", "fr_FR", "no BCP 47 tag")]
    public void Read_WrongName_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Butter, old, replacement);

        folder.ShouldReport(Butter, mark, gist);
    }

    [Fact]
    public void Read_NameOfTwoIngredients_NamesBothPlacesWhateverCaseAndHyphens()
    {
        folder.Edit(Butter, "beurre d'exemple", "EXAMPLE-OIL");

        folder.ShouldReport(Oil, "Example oil", $"is a name of example-butter too ({Butter}:{folder.Line(Butter, "EXAMPLE-OIL")})");
    }

    [Fact]
    public void Read_CommonNameNotFirst_IsReported()
    {
        var lines = folder.Text(Butter).Split('\n').ToList();
        var names = lines.FindIndex(l => l.Contains("\"names\"", StringComparison.Ordinal));
        (lines[names + 1], lines[names + 2]) = (lines[names + 2], lines[names + 1]);
        folder.Write(Butter, string.Join('\n', lines));

        folder.ShouldReport(Butter, "Example butter", "is not the first name");
    }

    [Theory]
    [InlineData("pt-BR")]
    [InlineData("zh-Hant-TW")]
    [InlineData("yo")]
    [InlineData("sr-Latn")]
    [InlineData("de-1996")]
    public void Read_WellFormedLanguage_IsAccepted(string tag)
    {
        folder.Edit(Butter, "\"language\": \"fr\"", $"\"language\": \"{tag}\"");

        SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }

    [Fact]
    public void Read_InciNameOfTwoIngredients_IsAccepted()
    {
        folder.Edit(
            Oil,
            "\"source\": \"trade-practice\" }\n",
            "\"source\": \"trade-practice\" },\n    { \"text\": \"Exemplum Vulgare Seed Butter\", \"kind\": \"inci\", \"evidence\": \"memory\", \"source\": \"recalled\" }\n");

        SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }
}
