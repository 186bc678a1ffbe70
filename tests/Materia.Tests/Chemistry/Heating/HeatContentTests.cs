using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Heating;
using Materia.Chemistry.Rules;

namespace Materia.Tests.Chemistry.Heating;

/// <summary>Heat of real fats, and cooling with the heat of their crystals.</summary>
public sealed class HeatContentTests
{
    private static readonly FilledVessel Beaker = new(Vessel.Find("glass-beaker")!, 275e-6);

    // zhang-2011 (abstract): insect waxes, beeswax one of them, take 168.1 to 203.2 J/g to melt; the model's own error of ±10 % on either side.
    [Fact]
    public void HeatOfCrystals_Beeswax_LiesInThePrintedRange() => Of("beeswax").HeatOfCrystals.ShouldBeInRange(168.1 * 0.9, 203.2 * 1.1);

    // Whole fats, recalled in the science note ±15 % (memory): cocoa butter 130 to 155 J/g, coconut oil about 105.
    [Theory]
    [InlineData("cocoa-butter", 130, 155)]
    [InlineData("coconut-oil", 105, 105)]
    public void Latent_WholeFatFromTheFridge_LiesInTheRecalledRange(string id, double low, double high) => Of(id).Latent(5, 50).ShouldBeInRange(low * 0.85, high * 1.15);

    // Hand-worked: without crystals a run of 1 °C steps is Newton's law itself: the logarithms of the steps add up.
    [Fact]
    public void Minutes_LiquidOil_IsNewtonsLaw()
    {
        var heat = Of("sunflower-oil");
        var capacity = (250 * heat.SpecificHeat) + Beaker.WallCapacity;

        CoolingRun.Minutes(heat, 250, Beaker, 6, 70, 30, 5).ShouldBe(NewtonCooling.Time(capacity, Beaker.Conductance(6), 70, 30, 5) / 60, 1e-6);
    }

    // Crystals give off heat: the extra time is at least that heat over the greatest loss, and at most over the least: bounds that hold for any order of release.
    [Fact]
    public void Minutes_CocoaButterSetting_TakesLongerByTheHeatOfItsCrystals()
    {
        var heat = Of("cocoa-butter");
        var loss = Beaker.Conductance(6);
        var extra = 250 * -heat.Latent(40, 20);
        var plain = NewtonCooling.Time((250 * heat.SpecificHeat) + Beaker.WallCapacity, loss, 40, 20, 5) / 60;

        var minutes = CoolingRun.Minutes(heat, 250, Beaker, 6, 40, 20, 5);

        extra.ShouldBeGreaterThan(10_000);
        (minutes - plain).ShouldBeInRange(extra / (loss * 35) / 60, extra / (loss * 15) / 60);
    }

    [Fact]
    public void TemperatureAt_ReadBack_GivesTheSolidContent()
    {
        var heat = Of("cocoa-butter");
        foreach (var percent in (double[])[10, 19, 25, 60])
        {
            heat.Solid(heat.TemperatureAt(percent)!.Value).ShouldBe(percent, 1e-6);
        }

        Of("sunflower-oil").TemperatureAt(25).ShouldBeNull();
    }

    // Melted fat needs 2.05 J for each gram and degree, here 250 g by 20 °C: hand-worked 10.25 kJ.
    [Fact]
    public void Between_LiquidOil_IsSpecificHeatAlone() => (250 * Of("sunflower-oil").Between(30, 50)).ShouldBe(10_250, 1);

    private static HeatContent Of(string id)
    {
        Ingredient ingredient = SeedCatalogue.Ingredient(id);
        var blend = TestFat.Blend((ingredient, 1));
        return new HeatContent(blend, BlendMelting.Of(blend));
    }
}
