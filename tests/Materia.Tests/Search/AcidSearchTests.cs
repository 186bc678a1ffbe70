using Materia.Search;

namespace Materia.Tests.Search;

/// <summary>
/// Stored in the sample: shea 18:1n-9 44 and 18:1n-7 1, mango 18:1n-9 43, cocoa 18:1 34 with no isomers, castor 18:1n-9 4 and
/// ricinoleic 88, avocado (used sample) 18:1n-9 50..74 and 18:1n-7 3..6.
/// </summary>
public class AcidSearchTests
{
    [Fact]
    public void Search_Isomer_TakesItsOwnShareOnly()
    {
        var page = Search("18:1n-7", "..100");

        page.Ids().ShouldBe(["avocado-oil", "cocoa-butter", "shea-butter"]);
        Share(page, "shea-butter").ShouldBe(new MatchedShare { Asked = "18:1n-7", Acid = "18:1n-7", Total = false, Low = 1, High = 1 });
    }

    [Fact]
    public void Search_IsomerWhereTheProfileHasOnlyTheTotal_FallsBackAndSaysSo()
    {
        var page = Search("18:1n-9", "30..40");

        page.Ids().ShouldBe(["cocoa-butter"]);
        Share(page, "cocoa-butter").ShouldBe(new MatchedShare { Asked = "18:1n-9", Acid = "18:1", Total = true, Low = 34, High = 34 });
    }

    [Fact]
    public void Search_IsomerNotNamedBesideOthers_NeverMatches() => Search("18:1n-9t", "..100").Ids().ShouldBe(["cocoa-butter"], "only its total may hold it");

    [Fact]
    public void Search_UndifferentiatedSymbol_SumsIsomersButNotHydroxyEpoxyAcidsOrAlcohols()
    {
        Share(Search("18:1", "..100"), "shea-butter").ShouldBe(new MatchedShare { Asked = "18:1", Acid = "18:1", Total = true, Low = 45, High = 45 });
        Share(Search("18:1", "..100"), "castor-oil").High.ShouldBe(4);
        Share(Search("18:1", "..100"), "avocado-oil").ShouldBe(new MatchedShare { Asked = "18:1", Acid = "18:1", Total = true, Low = 53, High = 80 });
    }

    [Fact]
    public void Search_Within_NeedsTheWholeRangeOfTheShare()
    {
        Search("18:1n-9", "60..").Ids().ShouldBe(["avocado-oil"]);
        Search("18:1n-9", "60..", RangeMatch.Within).Ids().ShouldBeEmpty();
        Search("18:1n-9", "50..74", RangeMatch.Within).Ids().ShouldBe(["avocado-oil"]);
    }

    [Fact]
    public void Search_SeveralSamples_LooksAtTheUsedOne() => Search("18:1n-9", "10..10").Ids().ShouldBeEmpty();

    [Fact]
    public void Search_UndifferentiatedSymbolOutsideTheTable_IsKnownByItsIsomers() => Search("18:2", "6..6").Ids().ShouldBe(["shea-butter"]);

    [Theory]
    [InlineData("18:9")]
    [InlineData("oleic")]
    [InlineData("")]
    [InlineData("18:")]
    [InlineData(":1")]
    [InlineData("18:1n-8")]
    [InlineData("99999999999999999999:1")]
    [InlineData("\ud800")]
    public void Search_UnknownAcid_IsAFault(string symbol)
    {
        var page = Search(symbol, "1..");

        page.Faults.ShouldHaveSingleItem().Member.ShouldBe("acid");
        page.Hits.ShouldBeEmpty();
    }

    private static SearchPage Search(string symbol, string range, RangeMatch match = RangeMatch.Overlap) =>
        Sample.Index.Search(new SearchRequest { Acids = new Dictionary<string, DecimalRange> { [symbol] = Sample.Range(range) }, RangeMatch = match });

    private static MatchedShare Share(SearchPage page, string id) => page.Hits.Single(h => h.IngredientId == id).Matched.Shares.ShouldHaveSingleItem();
}
