namespace Materia.Tests.Seed;

/// <summary>Faults in the tables of needs, each at its line.</summary>
public sealed class NeedCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    [Theory]
    [InlineData("soft-hair,target,solid-content,32,,,3,2", "soft-hare,target,solid-content,32,,,3,2", "soft-hare,", "need \"soft-hare\" is not in tables/needs.csv")]
    [InlineData("solid-content,32,,,3,2", "solid-content,32,,,3,", "solid-content,32,,,3,,", "a weight above 0")]
    [InlineData("solid-content,32,,,3,2", "solid-content,32,,,3,11", "3,11", "at most 10")]
    [InlineData("solid-content,32,,,3,2", "solid-content,32,,,,2", "32,,,,2", "low or high")]
    [InlineData("solid-content,32,,,3,2", "solid-content,32,,4,3,2", "4,3,2", "low is above high")]
    [InlineData("solid-content,32,,,3,2", "solid-content,,,,3,2", "solid-content,,", "have a temperature")]
    [InlineData("fatty-acid,,18:1n-9,40", "fatty-acid,,18:9,40", "18:9", "acid \"18:9\" is not in")]
    [InlineData("fatty-acid,,18:1n-9,40", "fatty-acid,,,40", "fatty-acid,,,40", "names its acid")]
    [InlineData("kind:essential-oil", "kind:mud", "kind:mud", "is none of the forms")]
    [InlineData("kind:essential-oil", "kind:clay", "kind:clay", "holds no ingredient")]
    [InlineData("stiff-hair,exclude,,,,,,,kind:essential-oil", "stiff-hair,exclude,,,,,,,", "stiff-hair,exclude", "scope belongs to")]
    [InlineData("stiff-hair,caution,,,,,,,", "stiff-hair,caution,,,,,,3,", "stiff-hair,caution", "belong to a target")]
    [InlineData("Ask a hairdresser.", "Ask a hairdresser", "Ask a hairdresser", "full stop")]
    public void Read_BadEffect_NamesIt(string old, string replacement, string mark, string gist)
    {
        folder.Edit(SeedNeedTexts.Effects, old, replacement);

        folder.ShouldReport(SeedNeedTexts.Effects, mark, gist);
    }

    [Theory]
    [InlineData("strands,stiff-hair", "strands,hard-hair", "strands,hard-hair", "opposes \"hard-hair\"")]
    [InlineData("strands,stiff-hair", "strands,soft-hair", "soft-hair,Soft hair", "is no other need")]
    [InlineData("soft-hair,Soft hair,strands", "soft-hair,Soft hair,feet", "feet", "subject \"feet\" is unknown")]
    public void Read_BadNeed_NamesIt(string old, string replacement, string mark, string gist)
    {
        folder.Edit(SeedNeedTexts.Needs, old, replacement);

        Materia.Seed.SeedReader.Read(folder.Root).Faults.ShouldContain(f => f.File == SeedNeedTexts.Needs && f.Line == folder.Line(SeedNeedTexts.Needs, mark) && f.Message.Contains(gist));
    }

    [Fact]
    public void Read_NeedWithoutEffects_AsksForThem()
    {
        folder.Write(SeedNeedTexts.Needs, folder.Text(SeedNeedTexts.Needs) + "new-hair,New hair,strands,,The hair is new.,common-practice,trade-practice,,,\n");

        folder.ShouldReport(SeedNeedTexts.Needs, "new-hair", "nothing follows from");
    }

    public void Dispose() => folder.Dispose();
}
