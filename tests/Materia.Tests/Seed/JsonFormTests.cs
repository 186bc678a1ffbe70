using Materia.Seed;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>Files whose JSON does not have the form of a record.</summary>
public sealed class JsonFormTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("\"part\": \"seed\"", "\"Part\": \"seed\"", "\"Part\"", "unknown member \"Part\"; the members are from, species, part")]
    [InlineData("\"part\": \"seed\"", "\"part\": \"seed\", \"part\": \"leaf\"", "\"leaf\"", "stands twice")]
    [InlineData("\"registry\": \"ec\", ", "", "232-293-8", "member \"registry\" is missing")]
    [InlineData("\"registry\": \"ec\"", "\"registry\": \"EC\"", "\"EC\"", "\"EC\" does not fit; write one of cas, ec")]
    [InlineData("\"registry\": \"ec\"", "\"registry\": \"cas, ec\"", "cas, ec", "write one of cas, ec")]
    [InlineData("\"typical\": 33.5", "\"typical\": \"33.5\"", "\"33.5\"", "write a number without quotes")]
    [InlineData("\"typical\": 33.5", "\"typical\": 1e308", "1e308", "write a number")]
    [InlineData("\"irritancy\": 1", "\"irritancy\": 1.5", "1.5", "write a whole number")]
    [InlineData("}, \"used\": true", "}, \"used\": \"yes\"", "\"yes\"", "write true or false")]
    [InlineData("\"part\": \"seed\"", "\"part\": 7", "\"part\": 7", "write text in quotes")]
    [InlineData("\"text\": \"Patch test it first.\"", "\"text\": null", "null", "leave it out or give its value")]
    [InlineData("[ \"tree-nut\" ]", "\"tree-nut\"", "tree-nut", "a list is wanted here")]
    [InlineData("{ \"temperature\": 60 }", "60", "\"at\": 60", "an object is wanted here")]
    [InlineData("\"unit\": \"Cel\", ", "\"unit\": \"Cel\" ", "\"Cel\"", "not valid JSON")]
    public void Read_MemberOfWrongForm_SaysWhatToWrite(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Butter, old, replacement);

        folder.ShouldReport(Butter, mark, gist);
    }

    [Fact]
    public void Read_SeveralSlipsInOneFile_ReportsEach()
    {
        folder.Edit(Butter, "\"registry\": \"ec\"", "\"registry\": \"einecs\"");
        folder.Edit(Butter, "\"unit\": \"Cel\", ", "");
        folder.Edit(Butter, "\"tested\"", "\"test\"");

        SeedReader.Read(folder.Root).Faults.Select(f => f.Line).ShouldBe(
        [
            folder.Line(Butter, "einecs"),
            folder.Line(Butter, "melting-range"),
            folder.Line(Butter, "\"test\""),
            folder.Line(Butter, "\"test\""),
        ]);
    }

    [Fact]
    public void Read_BrokenOff_NamesTheLineWhereReadingStopped()
    {
        var text = folder.Text(Oil);
        folder.Write(Oil, text[..text.IndexOf("\"constituents\"", StringComparison.Ordinal)]);

        var fault = SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem();
        (fault.File, fault.Line).ShouldBe((Oil, folder.Text(Oil).Split('\n').Length));
        fault.Message.ShouldContain("not valid JSON");
    }

    [Fact]
    public void Read_UnreadableIngredient_DoesNotCallItsSourcesUnused()
    {
        folder.Write("sources/other-book.json", folder.Text(Book).Replace("example-book", "other-book", StringComparison.Ordinal));
        folder.Edit(Oil, "{\n", "{,\n");

        SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem().File.ShouldBe(Oil);
    }

    [Fact]
    public void Read_UnreadableSource_DoesNotCallItsKeyUnknown()
    {
        folder.Edit(Trade, "\"title\"", "\"titel\"");

        SeedReader.Read(folder.Root).Faults.ShouldAllBe(f => f.File == Trade);
    }

    [Theory]
    [InlineData("\uFEFF", "byte order mark")]
    [InlineData("null\n", "an object is wanted here")]
    public void Read_NoRecordAtAll_SaysSo(string text, string gist)
    {
        folder.Write(Oil, text);

        var fault = SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem();
        (fault.File, fault.Line).ShouldBe((Oil, 1));
        fault.Message.ShouldContain(gist);
    }

    [Fact]
    public void Read_Latin1_AsksForUtf8()
    {
        File.WriteAllBytes(Path.Combine(folder.Root, Oil), [.. "{ \"id\": \""u8, 0xE9, .. "\" }"u8]);

        SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem().Message.ShouldContain("UTF-8");
    }
}
