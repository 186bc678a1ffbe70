using Materia.Catalogue;

namespace Materia.Tests.Catalogue;

public sealed class ReleaseTests
{
    private readonly Release release = new(3, new DateTimeOffset(2026, 1, 2, 3, 4, 5, TimeSpan.Zero), "abc", Samples.Content());

    [Fact]
    public void Find_KeyThatExists_GivesTheRecord()
    {
        release.FindIngredient("b-butter").ShouldBeSameAs(release.Content.Ingredients[1]);
        release.FindSource("recalled").ShouldBeSameAs(release.Content.Sources[0]);
        release.FindFattyAcid("16:0").ShouldBeSameAs(release.Content.FattyAcids[0]);
        release.FindUse("lip-balm").ShouldBeSameAs(release.Content.Uses[0]);
    }

    [Theory]
    [InlineData("c-butter")]
    [InlineData("A-butter")]
    [InlineData("")]
    public void Find_KeyThatDoesNotExist_GivesNothing(string key)
    {
        release.FindIngredient(key).ShouldBeNull();
        release.FindPresentId(key).ShouldBeNull();
        release.FindSource(key).ShouldBeNull();
        release.FindFattyAcid(key).ShouldBeNull();
        release.FindUse(key).ShouldBeNull();
    }

    [Fact]
    public void Find_FormerId_LeadsToThePresentOneAndIsNoIngredient()
    {
        release.FindPresentId("old-a").ShouldBe("a-butter");
        release.FindIngredient("old-a").ShouldBeNull();
    }

    [Fact]
    public void New_Release_SaysWhatItIs() =>
        (release.Number, release.Published.Year, release.Checksum).ShouldBe((3, 2026, "abc"));
}
