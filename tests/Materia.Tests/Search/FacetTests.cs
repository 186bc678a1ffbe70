using Materia.Catalogue;
using Materia.Search;

namespace Materia.Tests.Search;

public class FacetTests
{
    [Fact]
    public void Search_AllMatches_CountsEachValueOverAllPages()
    {
        var page = Sample.Index.Search(new SearchRequest { Limit = 1 });
        var all = Sample.Release.Content.Ingredients;

        page.Facets.Kind.ToDictionary(f => f.Value, f => f.Count).ShouldBe(all.CountBy(i => KebabCase<IngredientKind>.Word(i.Kind)), ignoreOrder: true);
        page.Facets.Function.ToDictionary(f => f.Value, f => f.Count).ShouldBe(all.SelectMany(i => i.Functions.Select(f => f.Function)).CountBy(f => f), ignoreOrder: true);
        page.Facets.Origin.Sum(f => f.Count).ShouldBe(all.Count - 1, "squalane has no origin in the sample");
    }

    [Fact]
    public void Search_SomeMatches_CountsThoseOnlyByCountThenName()
    {
        var facets = Sample.Search("cera").Facets;

        facets.Kind.ShouldBe([new("wax", 2)]);
        facets.Origin.ShouldBe([new("animal", 1), new("plant", 1)]);
        facets.Function.ShouldBe([new("film-forming", 2), new("emulsion-stabilising", 1)]);
    }

    [Fact]
    public void Search_KindsFunctionsOrigins_OneOfEachListMustHold()
    {
        Ids(new() { Kinds = [IngredientKind.Clay, IngredientKind.Starch] }).ShouldBe(["bentonite", "corn-starch", "kaolin"]);
        Ids(new() { Functions = ["opacifying", "tonic"] }).ShouldBe(["cetyl-alcohol", "lavender-oil"]);
        Ids(new() { Origins = [OriginKind.Animal, OriginKind.Synthetic] }).ShouldBe(["beeswax", "isopropyl-myristate"]);
        Ids(new() { Kinds = [IngredientKind.Clay, IngredientKind.Starch], Functions = ["bulking"], Origins = [OriginKind.Plant] }).ShouldBe(["corn-starch"]);
        Ids(new() { Functions = ["no-such-function"] }).ShouldBeEmpty();
    }

    [Fact]
    public void Search_NoMatches_HasNoFacets()
    {
        var facets = Sample.Search("nothing of the kind").Facets;

        (facets.Kind.Count, facets.Function.Count, facets.Origin.Count).ShouldBe((0, 0, 0));
    }

    private static IReadOnlyList<string> Ids(SearchRequest request) => Sample.Index.Search(request).Ids();
}
