using Materia.Catalogue;
using static Materia.Tests.Regulation.Labels;

namespace Materia.Tests.Catalogue;

public class MaterialPartShareTests
{
    [Fact]
    public void Of_SingleMaterial_IsItself()
    {
        var part = MaterialPartShare.Of(Release().FindIngredient("glycerin")!, Release()).ShouldHaveSingleItem();

        (part.InciName, part.Low, part.Typical, part.High).ShouldBe(("Glycerin", 100m, 100m, 100m));
    }

    [Fact]
    public void Of_MixtureOfMixtures_MultipliesTheShares()
    {
        // Half of it is the preserved water of 60 % water and 40 % phenoxyethanol.
        var outer = Named("outer", IngredientKind.Preservative, null) with { Parts = [Part("Preservative in water", 40, 50, 60, "preserved-water"), Part("Glycerin", null, 50, null, "glycerin")] };
        var release = Release(outer);

        MaterialPartShare.Of(outer, release).Select(p => (p.InciName, p.Low, p.Typical, p.High)).ShouldBe(
            [("Aqua", 24m, 30m, 36m), ("Phenoxyethanol", 16m, 20m, 24m), ("Glycerin", 50m, 50m, 50m)]);
    }

    [Fact]
    public void Of_PartWithOneEndOnly_TakesItAndLeavesTheOtherOpen()
    {
        var open = Named("open", IngredientKind.Extract, null) with { Parts = [Part("Aqua", 70, null, null, "water"), Part("Extractum", null, null, 10)] };

        MaterialPartShare.Of(open, Release(open)).Select(p => (p.Low, p.Typical, p.High)).ShouldBe([(70m, 70m, 100m), (0m, 10m, 10m)]);
    }

    [Fact]
    public void IsWater_ByNumberOrName() =>
        MaterialPartShare.Of(Release().FindIngredient("preserved-water")!, Release()).Select(p => p.IsWater).ShouldBe([true, false]);
}
