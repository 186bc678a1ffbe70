using Materia.Catalogue;
using Materia.Search;
using static Materia.Tests.Search.SampleIngredient;

namespace Materia.Tests.Search;

/// <summary>Search for what does not come from somewhere. The materials are made up.</summary>
public sealed class ExclusionSearchTests
{
    private static readonly IngredientIndex Index = IngredientIndex.Build(Sample.Make(1,
    [
        New("bee-wax", IngredientKind.Wax, OriginKind.Animal, "Bee wax", null),
        New("leaf-wax", IngredientKind.Wax, OriginKind.Plant, "Leaf wax", null),
        New("almond", IngredientKind.Oil, OriginKind.Plant, "Almond", null).Of(AllergenFamily.TreeNut),
        New("ready-mixed", IngredientKind.Wax, OriginKind.Plant, "Ready mixed", null).Holding("bee-wax", "almond"),
        New("of-unknown-origin", IngredientKind.Wax, null, "Of unknown origin", null),
    ]));

    [Fact]
    public void Search_KingdomExcluded_LeavesOutWhatHoldsItAndWhatDoesNotSay() =>
        Index.Search(new() { ExcludedOrigins = [OriginKind.Animal] }).Ids().Order().ShouldBe(["almond", "leaf-wax"]);

    [Fact]
    public void Search_AllergenExcluded_LeavesOutWhatHoldsItAndWhatDoesNotSay() =>
        Index.Search(new() { ExcludedAllergens = [AllergenFamily.TreeNut] }).Ids().Order().ShouldBe(["bee-wax", "leaf-wax"]);

    [Fact]
    public void Search_BothExcluded_LeavesOutEither() =>
        Index.Search(new() { ExcludedOrigins = [OriginKind.Animal, OriginKind.Mineral], ExcludedAllergens = [AllergenFamily.TreeNut] }).Ids().ShouldBe(["leaf-wax"]);

    [Fact]
    public void Search_NothingExcluded_FindsAll() => Index.Search(new()).Ids().Count.ShouldBe(5);
}
