using Materia.Formulation.Neighbours;
using Materia.Formulation.Scopes;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Neighbours;

/// <summary>Swaps that the trade knows. They are common practice, not print: who teaches making names them, and no source is cited.</summary>
public class TradeSwapTests
{
    /// <summary>One of the named ingredients must be among the first so many.</summary>
    [Theory]
    [InlineData("cetyl-alcohol", 3, "cetearyl-alcohol")]
    [InlineData("olive-oil", 12, "avocado-oil", "sweet-almond-oil")]
    [InlineData("kaolin", 6, "kaolin-pink", "kaolin-red", "kaolin-yellow", "illite", "fullers-earth")]
    [InlineData("sodium-benzoate", 6, "potassium-sorbate", "sodium-dehydroacetate", "sorbic-acid", "benzoic-acid", "dehydroacetic-acid")]
    [InlineData("polysorbate-60", 8, "polysorbate-80", "steareth-20", "ceteareth-20", "polysorbate-40", "ceteth-20")]
    public void Find_KnownSwap_RanksIt(string asked, int within, params string[] known)
    {
        var first = First(asked, within);

        first.Intersect(known).ShouldNotBeEmpty(string.Join(", ", first));
    }

    /// <summary>Kokum, sal and illipe are what makers take for cocoa butter: all three among the first six.</summary>
    [Theory]
    [InlineData("kokum-butter")]
    [InlineData("sal-butter")]
    [InlineData("illipe-butter")]
    public void Find_CocoaButter_RanksHardButtersHigh(string known) => First("cocoa-butter", 6).ShouldContain(known);

    /// <summary>Vegan balms take about half to two thirds as much candelilla as beeswax.</summary>
    [Fact]
    public void Find_BeeswaxWithoutAnimals_GivesCandelillaWithItsRatio()
    {
        IngredientScope.TryParseOrigin("animal", out var animal).ShouldBeTrue();
        var found = NeighbourSearch.Of(SeedCatalogue.Release).Find("beeswax", new() { Excluded = [animal!], Limit = 30 });

        var candelilla = found.Items.FirstOrDefault(n => n.Id == "candelilla-wax").ShouldNotBeNull(string.Join(", ", found.Items.Select(n => n.Id)));
        candelilla.SwapRatio.ShouldNotBeNull().Value.ShouldBeInRange(0.5m, 0.67m);
    }

    private static List<string> First(string asked, int count) =>
        [.. NeighbourSearch.Of(SeedCatalogue.Release).Find(asked, new() { Limit = count }).Items.Select(n => n.Id)];
}
