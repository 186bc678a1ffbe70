using Materia.Seed;
using static Materia.Tests.Seed.SeedBlendTexts;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>Substitution groups and their members.</summary>
public sealed class SubstitutionGroupCheckTests : IDisposable
{
    private const string Row = "example-group,Example group,\"Holds oil in water, more or less.\",common-practice,trade-practice,,,";

    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(Butter, "\"group\": \"example-group\"", "\"group\": \"other-group\"", "other-group", "group \"other-group\" is not in tables/substitution-groups.csv")]
    [InlineData(Butter, "\"swapRatio\": 1.25", "\"swapRatio\": 0", "\"swapRatio\"", "swapRatio is not above 0")]
    [InlineData(Blend, "\"swapRatio\": 1,", "\"swapRatio\": 1.1,", "\"swapRatio\"", "the reference of a group replaces itself part for part")]
    [InlineData(Groups, Row, Row + "\n" + "spare-group,Spare group,Nobody is in it.,common-practice,trade-practice,,,", "spare", "no ingredient is a member of spare-group")]
    [InlineData(Groups, "more or less.", "more or less", "example-group", "does not end with a full stop")]
    [InlineData(Groups, ",trade-practice", ",trade", "example-group", "source \"trade\" does not exist")]
    [InlineData(Groups, "common-practice,", "published,", "example-group", "published without a locator")]
    public void Read_WrongGroupOrMember_IsReported(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        folder.ShouldReport(file, mark, gist);
    }

    [Fact]
    public void Read_SecondReference_NamesBoth()
    {
        folder.Edit(Butter, "\"swapRatio\": 1.25", "\"reference\": true");

        folder.ShouldReport(Blend, "\"reference\"", "example-blend is a second reference of example-group beside example-butter");
    }

    [Fact]
    public void Read_GroupWithoutReference_IsReportedAtItsRow()
    {
        folder.Edit(Blend, "\"reference\": true, ", "");

        folder.ShouldReport(Groups, "example-group", "none of the 2 members of example-group is its reference");
    }

    [Fact]
    public void Read_ReferenceThatCouldNotBeRead_IsNotCalledMissing()
    {
        folder.Edit(Blend, "\"kind\": \"emulsifier\"", "\"kind\": \"emulgator\"");

        SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem().File.ShouldBe(Blend);
    }

    [Fact]
    public void Read_MemberTwice_IsReported()
    {
        folder.Edit(Butter, "\"text\": \"It holds less.\", \"evidence\": \"common-practice\", \"source\": \"trade-practice\" }", "\"text\": \"It holds less.\", \"evidence\": \"common-practice\", \"source\": \"trade-practice\" },\n{ \"group\": \"example-group\", \"text\": \"Again.\", \"evidence\": \"memory\", \"source\": \"recalled\" }");

        folder.ShouldReport(Butter, "Again", "group \"example-group\" stands twice; an ingredient is a member once");
    }

    [Theory]
    [InlineData("example-group,", "Example_group,", "not in kebab case")]
    [InlineData(Row, Row + "\n" + Row, "id \"example-group\" stands in line 2 too")]
    public void Read_WrongKey_IsReported(string old, string replacement, string gist)
    {
        folder.Edit(Groups, old, replacement);

        SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == Groups && f.Message.Contains(gist, StringComparison.Ordinal));
    }
}
