using System.Text.Json;
using System.Text.Json.Nodes;
using Materia.Seed;
using Materia.Seed.Formatting;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

public sealed class SeedFormatterTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Check_CanonicalDirectory_HasNoFault() => SeedFormatter.Check(folder.Root).ShouldBeEmpty();

    [Theory]
    [InlineData(Butter, "\"kind\": \"butter\",", "\"kind\" : \"butter\",", "\"butter\"")]
    [InlineData(Butter, "{ \"function\"", "{\"function\"", "\"function\"")]
    [InlineData(Butter, "[ \"tree-nut\" ]", "[\"tree-nut\"]", "tree-nut")]
    [InlineData(Butter, "\"low\": 0, \"high\": 2", "\"high\": 2, \"low\": 0", "\"high\": 2")]
    [InlineData(Butter, "d'exemple", "d\\u0027exemple", "exemple\", \"kind\"")]
    [InlineData(Oil, "\"high\": 0.5, ", "\"low\": null, \"high\": 0.5, ", "camphor")]
    [InlineData(Book, "examples\"\n}\n", "examples\"\n}", "}")]
    [InlineData(Acids, "stearic acid", "\"stearic acid\"", "stearic")]
    public void Check_OtherLayout_IsReportedAtItsLineAndMendedByRewrite(string file, string old, string replacement, string mark)
    {
        var canonical = folder.Text(file);
        folder.Edit(file, old, replacement);

        var fault = SeedFormatter.Check(folder.Root).ShouldHaveSingleItem();
        fault.ShouldBe(new SeedFault(file, folder.Line(file, mark), "not in canonical form; run format"));

        var changed = new List<string>();
        SeedFormatter.Rewrite(folder.Root, changed.Add).ShouldBeEmpty();
        changed.ShouldBe([file]);
        folder.Text(file).ShouldBe(canonical);
    }

    [Fact]
    public void Rewrite_ForeignLayout_GivesCanonicalText()
    {
        string[] files = [Butter, Oil, Book, Recalled, Trade];
        var canonical = files.Select(folder.Text).ToList();
        var indented = new JsonSerializerOptions { WriteIndented = true, NewLine = "\r\n" };
        foreach (var file in files)
        {
            folder.Write(file, JsonNode.Parse(folder.Text(file))!.ToJsonString(indented));
        }

        SeedFormatter.Rewrite(folder.Root, _ => { }).ShouldBeEmpty();

        files.Select(folder.Text).ShouldBe(canonical);
    }

    [Fact]
    public void Rewrite_UnreadableFile_LeavesItAndSaysWhy()
    {
        folder.Edit(Butter, "\"part\": \"seed\"", "\"Part\":\"seed\"");
        var text = folder.Text(Butter);

        SeedFormatter.Rewrite(folder.Root, _ => { }).ShouldHaveSingleItem().Message.ShouldContain("unknown member");

        folder.Text(Butter).ShouldBe(text);
    }

    [Fact]
    public void Rewrite_CanonicalDirectory_TouchesNothing()
    {
        var changed = new List<string>();

        SeedFormatter.Rewrite(folder.Root, changed.Add);

        changed.ShouldBeEmpty();
    }
}
