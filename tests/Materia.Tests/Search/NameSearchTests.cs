using Materia.Search;

namespace Materia.Tests.Search;

public class NameSearchTests
{
    [Theory]
    [InlineData("karité", "shea-butter")]
    [InlineData("shae buter", "shea-butter")]
    [InlineData("61789-91-1", "jojoba-oil")]
    [InlineData("rizinusöl", "castor-oil")]
    [InlineData("cera alba", "beeswax")]
    public void Search_QueryOfTheIssue_FindsTheRightIngredientFirst(string text, string id) => Sample.Search(text).Ids()[0].ShouldBe(id);

    [Theory]
    [InlineData("Butyrospermum Parkii Butter", "shea-butter")] // INCI
    [InlineData("vitellaria paradoxa", "shea-butter")] // botanical
    [InlineData("nkuto", "shea-butter")] // Twi
    [InlineData("oleum cacao", "cocoa-butter")] // pharmacopoeia
    [InlineData("hexadecan-1-ol", "cetyl-alcohol")] // chemical
    [InlineData("CI 77004", "kaolin")] // code
    [InlineData("ci77004", "kaolin")]
    [InlineData("e558", "bentonite")]
    [InlineData("huile d’avocat", "avocado-oil")] // a printer's apostrophe
    [InlineData("cire abeille", "beeswax")]
    [InlineData("sheabutter", "shea-butter")]
    [InlineData("cetyl-alcohol", "cetyl-alcohol")]
    public void Search_NameOfAnyKind_FindsItFirst(string text, string id) => Sample.Search(text).Ids()[0].ShouldBe(id);

    [Theory]
    [InlineData("61789-91-1")]
    [InlineData("61789911")]
    [InlineData("61789‑91‑1")] // non-breaking hyphens, as pages paste them
    [InlineData(" CAS 61789-91-1 ")]
    [InlineData("CAS: 61789-91-1")]
    [InlineData("jojoba 61789-91-1")]
    [InlineData("６１７８９９１１")] // full-width digits
    public void Search_CasNumberInAnyForm_FindsThatIngredientAlone(string text) => Sample.Search(text).Ids().ShouldBe(["jojoba-oil"]);

    [Theory]
    [InlineData("232-293-8")]
    [InlineData("2322938")]
    [InlineData("EC 232-293-8")]
    public void Search_EcNumberInAnyForm_FindsThatIngredientAlone(string text) => Sample.Search(text).Ids().ShouldBe(["castor-oil"]);

    [Fact]
    public void Search_CasNumberWithAWrongDigit_FindsNothing()
    {
        var page = Sample.Search("61789-91-2");

        page.Ids().ShouldBeEmpty();
        page.DidYouMean.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("RIZINUSÖL", "castor-oil")]
    [InlineData("rizinusoel", "castor-oil")]
    [InlineData("rizinusol", "castor-oil")]
    [InlineData("rizinuso\u0308l", "castor-oil")] // decomposed
    [InlineData("maisstaerke", "corn-starch")]
    [InlineData("maisstarke", "corn-starch")]
    [InlineData("karite", "shea-butter")]
    [InlineData("KARITÉ", "shea-butter")]
    [InlineData("ori", "shea-butter")]
    [InlineData("ọ̀rí", "shea-butter")] // with the dot below that the stored form lacks
    [InlineData("yokumi", "shea-butter")] // open o of Ewe
    [InlineData("yɔkumi", "shea-butter")]
    [InlineData("cupuacu", "cupuacu-butter")]
    [InlineData("babaçu", "babassu-oil")]
    [InlineData("alcool cetylique", "cetyl-alcohol")]
    public void Search_AnySpellingOfAccents_FindsItFirstAsTyped(string text, string id)
    {
        var page = Sample.Search(text);

        page.Ids()[0].ShouldBe(id);
        page.Hits[0].Matched.Names[0].How.ShouldBe(MatchDegree.Exact);
        page.DidYouMean.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("k", "kaolin")]
    [InlineData("kaol", "kaolin")]
    [InlineData("mango bu", "mango-butter")]
    [InlineData("beurre de kar", "shea-butter")]
    [InlineData("lavend", "lavender-oil")]
    [InlineData("rizinusoe", "castor-oil")]
    [InlineData("61789-91", "jojoba-oil")]
    public void Search_LastWordUnfinished_FindsItFirst(string text, string id)
    {
        var page = Sample.Search(text);

        page.Ids()[0].ShouldBe(id);
        page.Hits[0].Matched.Names[0].How.ShouldBe(MatchDegree.Prefix);
    }

    [Fact]
    public void Search_FirstWordUnfinished_IsNoPrefixMatch() => Sample.Search("mang butter").DidYouMean.ShouldNotBeEmpty();

    [Fact]
    public void Search_WordsOfDifferentNames_FindsTheIngredientAndSaysWhichNames()
    {
        var page = Sample.Search("karité butyrospermum");

        page.Ids().ShouldBe(["shea-butter"]);
        page.Hits[0].Matched.Names.Select(n => n.Text).ShouldBe(["Butyrospermum Parkii Butter", "beurre de karité"]);
    }

    [Fact]
    public void Search_OneWordFoundNowhere_FindsNothing() => Sample.Search("shea kaolin").Ids().ShouldBeEmpty();

    [Fact]
    public void Search_BlankText_FindsAllByName()
    {
        var page = Sample.Search(" \t");

        page.Total.ShouldBe(Sample.Release.Content.Ingredients.Count);
        page.Ids().Take(3).ShouldBe(["avocado-oil", "babassu-oil", "beeswax"]);
    }

    [Fact]
    public void Search_TextWithoutAWord_FindsNothing() => Sample.Search("*?~").Ids().ShouldBeEmpty();

    [Fact]
    public void Search_EmptyRelease_FindsNothing()
    {
        using var empty = IngredientIndex.Build(Sample.Make(1, []));

        empty.Search(new SearchRequest { Text = "shae" }).Total.ShouldBe(0);
        empty.Search(new SearchRequest()).Ids().ShouldBeEmpty();
        empty.Suggest("s", 5).ShouldBeEmpty();
        empty.NearestIds("shea", 5).ShouldBeEmpty();
    }
}
