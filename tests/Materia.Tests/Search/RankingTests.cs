using Materia.Catalogue;
using Materia.Search;
using static Materia.Tests.Search.SampleIngredient;

namespace Materia.Tests.Search;

public class RankingTests
{
    [Fact]
    public void Search_EveryWholeNameInTheRelease_PutsAnIngredientOfThatNameFirst()
    {
        foreach (var ingredient in Sample.Release.Content.Ingredients)
        {
            foreach (var name in ingredient.Names.Select(n => n.Text).Concat(ingredient.Numbers.Select(n => n.Number)))
            {
                Sample.Search(name).Ids()[0].ShouldBe(ingredient.Id, name);
            }
        }
    }

    [Theory]
    [InlineData("sal butter", "sal-butter")]
    [InlineData("babassu", "babassu-oil")]
    [InlineData("sea salt", "sea-salt")]
    [InlineData("almond oil", "sweet-almond-oil")]
    public void Search_NameWithNearNeighbours_PutsTheExactOneFirst(string text, string id) => Sample.Search(text).Ids()[0].ShouldBe(id);

    [Fact]
    public void Search_Sal_PutsTheWordBeforeWordsThatBeginWithIt() => Sample.Search("sal").Ids().ShouldBe(["sea-salt", "sal-butter"], "the INCI name Maris Sal is a letter shorter than Sal butter");

    [Fact]
    public void Search_AllTiers_RanksWholeThenExactThenPrefixThenAcrossNames()
    {
        using var index = Index(
            One("a-across", "Beta", Synonym("en", "alpha wax")),
            One("b-prefix", "Alpha betatron"),
            One("c-exact", "Alpha and a very long beta"),
            One("d-whole", "Something else", Synonym("fr", "alpha bêta")));

        index.Search(new SearchRequest { Text = "alpha beta" }).Ids().ShouldBe(["d-whole", "c-exact", "b-prefix", "a-across"]);
    }

    [Fact]
    public void Search_TypingErrors_RanksFewerErrorsFirst()
    {
        using var index = Index(One("a-two", "Mangosteyn"), One("b-one", "Mangustin"), One("c-none-near", "Marigold"));

        index.Search(new SearchRequest { Text = "mangostin" }).Ids().ShouldBe(["b-one", "a-two"]);
    }

    [Fact]
    public void Search_ExactWordElsewhere_HidesFuzzyNeighbours()
    {
        using var index = Index(One("a", "Babasso wax"), One("b", "Babassu of the very long name"));

        index.Search(new SearchRequest { Text = "babassu" }).Ids().ShouldBe(["b"]);
    }

    [Fact]
    public void Search_EqualMatches_RanksShorterNameThenKindThenId()
    {
        using var index = Index(
            One("c", "Gamma oil"), One("b", "Gamma oil"), One("a", "Zeta", Synonym("en", "gamma oil")), One("d", "Gamma o"));

        index.Search(new SearchRequest { Text = "gamma" }).Ids().ShouldBe(["d", "b", "c", "a"]);
    }

    [Fact]
    public void Search_Swap_CountsAsOneError()
    {
        using var index = Index(One("shea", "Shea"));

        index.Search(new SearchRequest { Text = "shae" }).Ids().ShouldBe(["shea"]);
    }

    [Theory]
    [InlineData("sae")] // three letters: nothing is forgiven
    [InlineData("hsea")] // the first letter must be right
    [InlineData("sxxa")] // two errors in four letters
    [InlineData("lavxxxer")] // three in eight
    public void Search_TooManyErrors_FindsNothing(string text) => Sample.Search(text).Ids().ShouldBeEmpty();

    [Fact]
    public void Search_OneErrorInTheLastWord_SaysFuzzily()
    {
        var matched = Sample.Search("lavendre oil").Hits[0].Matched.Names[0];

        matched.ShouldBe(new MatchedName("Lavender oil", MatchedNameKind.Common, "en", MatchDegree.Fuzzy));
    }

    [Fact]
    public void Search_NameInAnotherLanguage_SaysKindAndLanguage() =>
        Sample.Search("rizinusöl").Hits[0].Matched.Names.ShouldBe([new MatchedName("Rizinusöl", MatchedNameKind.Synonym, "de", MatchDegree.Exact)]);

    [Fact]
    public void Search_TwoNamesWrittenAlike_NamesBoth() =>
        Sample.Search("kaolin").Hits[0].Matched.Names.Select(n => n.Kind).ShouldBe([MatchedNameKind.Common, MatchedNameKind.Inci]);

    private static Ingredient One(string id, string common, params IEnumerable<IngredientName> others) =>
        New(id, IngredientKind.Oil, OriginKind.Plant, common, null, others);

    private static IngredientIndex Index(params IReadOnlyList<Ingredient> ingredients) => IngredientIndex.Build(Sample.Make(1, ingredients));
}
