using Materia.Catalogue;
using Materia.Search;

namespace Materia.Tests.Search;

public class SuggestTests
{
    [Theory]
    [InlineData("shea b", "Shea butter")]
    [InlineData("beurre de k", "beurre de karité")]
    [InlineData("riz", "Rizinusöl")]
    [InlineData("cera a", "Cera Alba")]
    [InlineData("lavander o", "Lavender oil")] // a finished word misspelt, the next unfinished
    [InlineData("61789", "61789-91-1")]
    public void Suggest_TextBeingTyped_CompletesItFirst(string text, string name) => Sample.Index.Suggest(text, 5)[0].Text.ShouldBe(name);

    [Fact]
    public void Suggest_OneIngredient_IsNamedOnceWithKindAndLanguage() =>
        Sample.Index.Suggest("karit", 5).ShouldBe([new Suggestion("karité", "shea-butter", MatchedNameKind.Synonym, "fr")]);

    [Fact]
    public void Suggest_UnfinishedWord_PutsNamesThatBeginWithItFirst()
    {
        var ids = Sample.Index.Suggest("bu", 20).Select(s => s.Text).ToArray();

        ids[0].ShouldBe("Butyrospermum Parkii Butter", "every other match has its word in the middle");
        ids.Length.ShouldBe(6);
    }

    [Fact]
    public void Suggest_SeveralNamesFit_ShowsTheCommonNameBeforeAShorterSynonym()
    {
        using var index = IngredientIndex.Build(Sample.Make(1,
        [
            SampleIngredient.New("shea-butter", IngredientKind.Butter, null, "Shea butter", null, SampleIngredient.Synonym("nl", "sheaboter")),
        ]));

        index.Suggest("she", 5).ShouldHaveSingleItem().Text.ShouldBe("Shea butter");
        index.Suggest("sheabo", 5).ShouldHaveSingleItem().Text.ShouldBe("sheaboter");
    }

    [Theory]
    [InlineData(3, 3)]
    [InlineData(0, 0)]
    [InlineData(-1, 0)]
    public void Suggest_Limit_GivesNoMore(int limit, int count) => Sample.Index.Suggest("oil", limit).Count.ShouldBe(count);

    [Fact]
    public void Suggest_NothingTyped_GivesNothing() => Sample.Index.Suggest(" ", 5).ShouldBeEmpty();

    [Theory]
    [InlineData("shea-buter", "shea-butter")]
    [InlineData("shae-butter", "shea-butter")]
    [InlineData("Shea Butter", "shea-butter")]
    [InlineData("sheabutter", "shea-butter")]
    [InlineData("rosehip-oil", "rosehip-seed-oil")]
    [InlineData("refined-shea-butter", "shea-butter")]
    [InlineData("argile-blanche", "kaolin")]
    [InlineData("jojoba", "jojoba-oil")]
    public void NearestIds_UnknownId_GivesTheLikeliestFirst(string text, string id) => Sample.Index.NearestIds(text, 3)[0].ShouldBe(id);

    [Fact]
    public void NearestIds_NothingNear_GivesNothing() => Sample.Index.NearestIds("xylitol", 3).ShouldBeEmpty();

    [Fact]
    public void NearestIds_Limit_GivesNoMore() => Sample.Index.NearestIds("oil", 2).Count.ShouldBe(2);

    [Fact]
    public void NearestIds_IdThatIsNoName_IsFoundByTheId()
    {
        using var index = IngredientIndex.Build(Sample.Make(1,
        [
            SampleIngredient.New("mica-silk", IngredientKind.Powder, null, "Sericite", null) with { FormerIds = ["old-powder"] },
        ]));

        index.NearestIds("mica-slik", 3).ShouldBe(["mica-silk"]);
        index.NearestIds("oldpowder", 3).ShouldBe(["mica-silk"]);
    }
}
