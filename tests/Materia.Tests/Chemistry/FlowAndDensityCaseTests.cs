using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry;

public class FlowAndDensityCaseTests
{
    private static readonly Ingredient Olive = SeedCatalogue.Ingredient("olive-oil");

    [Fact]
    public void BlendFlow_Butter_StartsWhereItIsMelted()
    {
        var flow = BlendFlow.Of(TestFat.Blend((Olive, 0.7), (SeedCatalogue.Ingredient("cocoa-butter"), 0.3)));

        var from = flow.ValidFrom.ShouldNotBeNull();
        flow.Viscosity[0].Temperature.ShouldBeGreaterThanOrEqualTo(from);
        flow.Viscosity.ShouldNotContain(v => v.Temperature == 20);
    }

    [Fact]
    public void BlendFlow_ButterWithoutMeltingFigure_StartsAtSixtyWithAWarning()
    {
        var butter = TestFat.Of("unknown-butter", IngredientKind.Butter, ("18:0", 40), ("18:1n-9", 60));

        var flow = BlendFlow.Of(TestFat.Blend((butter, 1)));

        flow.ValidFrom.ShouldBeNull();
        flow.Viscosity[0].Temperature.ShouldBe(60);
        flow.Warnings.ShouldContain(w => w.Contains("unknown-butter", StringComparison.Ordinal));
    }

    [Fact]
    public void BlendFlow_MoreThanAFifthWithoutViscosity_IsAbsent()
    {
        var flow = BlendFlow.Of(TestFat.Blend((Olive, 0.75), (SeedCatalogue.Ingredient("beeswax"), 0.25)));

        flow.Viscosity.ShouldBeEmpty();
        flow.Absent!.ShouldContain("beeswax");
        flow.Coverage.ShouldBe(0.75, 1e-6);
    }

    [Fact]
    public void BlendFlow_Powder_ThickensAndTooMuchIsRefused()
    {
        var kaolin = SeedCatalogue.Ingredient("kaolin");
        var plain = BlendFlow.Of(TestFat.Blend((Olive, 1)));
        var some = BlendFlow.Of(TestFat.Blend((Olive, 0.8), (kaolin, 0.2)));
        var much = BlendFlow.Of(TestFat.Blend((Olive, 0.25), (kaolin, 0.75)));

        some.Solids!.RelativeViscosity!.Value.ShouldBeGreaterThan(1);

        // Printed to three digits, so the product agrees to about one percent.
        some.Viscosity[0].Value.ShouldBe(plain.Viscosity[0].Value * some.Solids.RelativeViscosity.Value, 0.01 * some.Viscosity[0].Value);
        much.Absent!.ShouldContain("paste");
        much.Solids!.RelativeViscosity.ShouldBeNull();
    }

    [Fact]
    public void BlendFlow_CastorWithHydrocarbon_WarnsOfLayers()
    {
        var flow = BlendFlow.Of(TestFat.Blend((SeedCatalogue.Ingredient("castor-oil"), 0.5), (SeedCatalogue.Ingredient("squalane"), 0.5)));

        flow.Warnings.ShouldContain(w => w.Contains("does not mix", StringComparison.Ordinal));
        flow.Warnings.ShouldContain(w => w.Contains("fivefold", StringComparison.Ordinal));
    }

    [Fact]
    public void BlendFlow_OwnViscosity_GoesBeforeTheModel()
    {
        var figure = TestFat.Figure(Property.Viscosity, 100, temperature: 25) with { Source = "own" };
        var own = TestFat.Of("own-oil", IngredientKind.Oil, ("18:1n-9", 80), ("16:0", 20)) with { Properties = [figure] };

        BlendFlow.Of(TestFat.Blend((own, 1))).Viscosity.Single(v => v.Temperature == 25).Value.ShouldBe(100, 0.5, "three digits");
    }

    [Fact]
    public void BlendFlow_ReadMeasurements_LieInItsRange()
    {
        // Diamante and Lan 2014, abstract read: rice bran 39.8 and walnut 29.6 mPa.s at 38 °C; between the figures at 32 and 40 °C.
        foreach (var (id, published) in new[] { ("rice-bran-oil", 39.8), ("walnut-oil", 29.6) })
        {
            var flow = BlendFlow.Of(TestFat.Blend((SeedCatalogue.Ingredient(id), 1)));
            published.ShouldBeInRange(flow.Viscosity.Single(v => v.Temperature == 40).Low, flow.Viscosity.Single(v => v.Temperature == 32).High, id);
        }
    }

    [Fact]
    public void BlendDensity_OwnFigure_IsCarriedAlongTheTemperature()
    {
        var figure = TestFat.Figure(Property.Density, 0.92m, temperature: 20) with { Source = "own" };
        var own = TestFat.Of("own-oil", IngredientKind.Oil, ("18:1n-9", 100)) with { Properties = [figure] };

        var values = BlendDensity.Of(TestFat.Blend((own, 1))).Values;

        values[0].Value.ShouldBe(0.92, 1e-9);
        values.Single(v => v.Temperature == 60).Value.ShouldBe(0.92 - (40 * 0.66e-3), 1e-4, "0.66 kg/m3 for each kelvin");
    }

    [Fact]
    public void BlendDensity_OilAndPowder_AddsVolumes()
    {
        var oil = TestFat.Of("oil", IngredientKind.Oil) with { Properties = [TestFat.Figure(Property.Density, 0.9m, temperature: 20)] };
        var clay = TestFat.Of("clay", IngredientKind.Clay) with { Properties = [TestFat.Figure(Property.Density, 2.6m)] };

        var result = BlendDensity.Of(TestFat.Blend((oil, 0.9), (clay, 0.1)));

        result.Values[0].Value.ShouldBe(1 / ((0.9 / 0.9) + (0.1 / 2.6)), 1e-4);
        result.Values[0].High.ShouldBe(result.Values[0].Value * 1.05, 1e-4);
        result.Warnings.ShouldContain(w => w.Contains("powders", StringComparison.Ordinal));
    }

    [Fact]
    public void BlendDensity_BelowTheMeltingFigure_AllowsForSolidFat()
    {
        var result = BlendDensity.Of(TestFat.Blend((SeedCatalogue.Ingredient("cocoa-butter"), 1)));
        var melted = result.MeltedFrom.ShouldNotBeNull();

        foreach (var value in result.Values)
        {
            (value.High / value.Value > 1.08).ShouldBe(value.Temperature < melted, $"{value.Temperature} °C");
        }

        result.Warnings.ShouldContain(w => w.Contains("melted", StringComparison.Ordinal));
    }
}
