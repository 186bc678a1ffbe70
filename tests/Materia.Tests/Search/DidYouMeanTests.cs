using Materia.Catalogue;
using Materia.Search;

namespace Materia.Tests.Search;

public class DidYouMeanTests
{
    [Theory]
    [InlineData("shae buter", "Shea butter")]
    [InlineData("kaolim", "Kaolin")]
    [InlineData("rizinussöl", "Rizinusöl")]
    [InlineData("rizinnusoel", "Rizinusöl")]
    [InlineData("candelila wax", "Candelilla wax")]
    [InlineData("hexadecan-1-oil", "hexadecan-1-ol")]
    [InlineData("raw shea butter", "Shea butter")] // a word that no name has
    public void Search_NothingAsTyped_OffersTheNearestNameFirst(string text, string name) => Sample.Search(text).DidYouMean[0].Text.ShouldBe(name);

    [Theory]
    [InlineData("shea butter")]
    [InlineData("shea")]
    [InlineData("she")]
    [InlineData("rose hip oil")] // as typed but for a space
    [InlineData("")]
    public void Search_FoundAsTyped_OffersNothing(string text) => Sample.Search(text).DidYouMean.ShouldBeEmpty();

    [Fact]
    public void Search_RoseHipAsTwoWords_FindsRosehipAsTyped()
    {
        var page = Sample.Search("rose hip oil");

        page.Ids().ShouldBe(["rosehip-seed-oil"]);
        page.Hits[0].Matched.Names[0].How.ShouldBe(MatchDegree.Exact);
    }

    [Fact]
    public void Search_FoundAsTypedButFilteredOut_OffersNothingAndFindsNothing()
    {
        var page = Sample.Index.Search(new SearchRequest { Text = "kaolin", Kinds = [IngredientKind.Butter] });

        page.Total.ShouldBe(0);
        page.DidYouMean.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("quinoa")]
    [InlineData("tucuma butter")] // a butter that the sample lacks must not bring up every butter
    [InlineData("12345")]
    [InlineData("%%%")]
    public void Search_NothingNear_OffersNothing(string text) => Sample.Search(text).DidYouMean.ShouldBeEmpty();

    [Fact]
    public void Search_SeveralIngredientsOfOneInciName_OffersTheNameOnce()
    {
        using var index = IngredientIndex.Build(Sample.Make(1,
        [
            SampleIngredient.New("kaolin", IngredientKind.Clay, null, "White clay", "Kaolin"),
            SampleIngredient.New("kaolin-pink", IngredientKind.Clay, null, "Pink clay", "Kaolin"),
        ]));

        var page = index.Search(new SearchRequest { Text = "kaolim" });

        page.Total.ShouldBe(2);
        page.DidYouMean.ShouldHaveSingleItem().Text.ShouldBe("Kaolin");
    }
}
