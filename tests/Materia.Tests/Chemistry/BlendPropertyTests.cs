using CsCheck;
using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry;

/// <summary>What every blend must obey, on random blends of the catalogue's own fats.</summary>
public class BlendPropertyTests
{
    /// <summary>Results are rounded to two decimals; half a unit of the last on each side.</summary>
    private const double Rounding = 0.011;

    private static readonly Ingredient[] Fats = [.. SeedCatalogue.Release.Content.Ingredients
        .Where(i => i.Kind is IngredientKind.Oil or IngredientKind.Butter)
        .Where(i => IodineValue.Of(TestFat.Blend((i, 1))).Value is not null && SaponificationValue.Of(TestFat.Blend((i, 1))).Value is not null)
        .Where(i => BlendDensity.Of(TestFat.Blend((i, 1))).Values.Count > 0)];

    private static readonly Gen<(Ingredient Ingredient, double Mass)[]> Parts =
        Gen.Select(Gen.Int[0, Fats.Length - 1], Gen.Double[0.01, 1], (i, mass) => (Fats[i], mass)).Array[1, 6];

    [Fact]
    public void Catalogue_HasEnoughFatsToTry() => Fats.Length.ShouldBeGreaterThan(80);

    [Fact]
    public void IodineValue_Blend_LiesBetweenItsParts() => Parts.Sample(parts =>
    {
        var own = parts.Select(p => IodineValue.Of(TestFat.Blend((p.Ingredient, 1))).Value!.Value).ToList();
        var blend = IodineValue.Of(TestFat.Blend(parts));

        blend.Value!.Value.ShouldBeInRange(own.Min() - Rounding, own.Max() + Rounding);
        blend.Value.Value.ShouldBeInRange(blend.Low!.Value, blend.High!.Value);
    });

    [Fact]
    public void SaponificationValue_Blend_LiesBetweenItsParts() => Parts.Sample(parts =>
    {
        var own = parts.Select(p => SaponificationValue.Of(TestFat.Blend((p.Ingredient, 1))).Value!.Value).ToList();
        var blend = SaponificationValue.Of(TestFat.Blend(parts));

        blend.Value!.Value.ShouldBeInRange(own.Min() - Rounding, own.Max() + Rounding);
        blend.Value.Value.ShouldBeInRange(blend.Low!.Value, blend.High!.Value);
    });

    [Fact]
    public void IodineValue_Blend_IsTheMassWeightedMean() => Parts.Sample(parts =>
    {
        var total = parts.Sum(p => p.Mass);
        var mean = parts.Sum(p => p.Mass * IodineValue.Of(TestFat.Blend((p.Ingredient, 1))).Value!.Value) / total;

        IodineValue.Of(TestFat.Blend(parts)).Value!.Value.ShouldBe(mean, Rounding);
    });

    [Fact]
    public void AllResults_OrderAndScale_DoNotMatter() => Parts.Select(Gen.Double[0.1, 10]).Sample((parts, scale) =>
    {
        var before = TestFat.Blend(parts);
        var after = TestFat.Blend([.. parts.Reverse().Select(p => (p.Ingredient, p.Mass * scale))]);

        IodineValue.Of(after).Value!.Value.ShouldBe(IodineValue.Of(before).Value!.Value, Rounding);
        SaponificationValue.Of(after).Value!.Value.ShouldBe(SaponificationValue.Of(before).Value!.Value, Rounding);
        BlendOxidation.Of(after).CoxValue.Value.GetValueOrDefault().ShouldBe(BlendOxidation.Of(before).CoxValue.Value.GetValueOrDefault(), 0.002);
        Same(BlendDensity.Of(after).Values, BlendDensity.Of(before).Values, 0.0002);
        Same(BlendFlow.Of(after).Viscosity, BlendFlow.Of(before).Viscosity, 0.01);
        var acids = FattyAcidComposition.Of(before).Acids.ToDictionary(a => a.Acid);
        foreach (var row in FattyAcidComposition.Of(after).Acids)
        {
            row.Percent.ShouldBe(acids[row.Acid].Percent, 0.002, row.Acid);
        }
    });

    [Fact]
    public void FattyAcidComposition_AnyBlend_AddsUpAndHoldsItsBounds() => Parts.Sample(parts =>
    {
        var result = FattyAcidComposition.Of(TestFat.Blend(parts));
        if (result.Absent is not null)
        {
            result.Acids.ShouldBeEmpty();
            return;
        }

        // Three decimals on up to thirty rows.
        result.Acids.Sum(a => a.Percent).ShouldBe(100, 0.02);
        result.Totals.Sum(t => t.Percent).ShouldBe(100, 0.02);
        (result.Classes!.Saturated.Percent + result.Classes.Monounsaturated.Percent + result.Classes.Polyunsaturated.Percent).ShouldBe(100, 0.003);
        result.Totals.SelectMany(t => t.Of).ShouldBe(result.Acids.Select(a => a.Acid), ignoreOrder: true);
        foreach (var row in result.Acids)
        {
            row.Percent.ShouldBeInRange(row.Low, row.High, row.Acid);
        }

        foreach (var row in result.Totals)
        {
            row.Percent.ShouldBeInRange(row.Low, row.High, row.Chain);
        }
    });

    [Fact]
    public void BlendDensity_AnyBlend_LiesBetweenItsPartsAndFallsWithWarmth() => Parts.Sample(parts =>
    {
        var own = parts.Select(p => BlendDensity.Of(TestFat.Blend((p.Ingredient, 1))).Values).ToList();
        var blend = BlendDensity.Of(TestFat.Blend(parts)).Values;
        for (var i = 0; i < blend.Count; i++)
        {
            blend[i].Value.ShouldBeInRange(own.Min(o => o[i].Value) - 0.0002, own.Max(o => o[i].Value) + 0.0002);
            blend[i].Value.ShouldBeInRange(blend[i].Low, blend[i].High);
        }

        blend.Select(b => b.Value).ShouldBe(blend.Select(b => b.Value).OrderDescending());
    });

    [Fact]
    public void BlendFlow_AnyBlend_LiesInItsRangeAndFallsWithWarmth() => Parts.Sample(parts =>
    {
        var flow = BlendFlow.Of(TestFat.Blend(parts));
        if (flow.Absent is not null)
        {
            flow.Viscosity.ShouldBeEmpty();
            return;
        }

        flow.Viscosity.ShouldNotBeEmpty();
        flow.Viscosity.ShouldAllBe(v => v.Low <= v.Value && v.Value <= v.High && v.Temperature >= (flow.ValidFrom ?? 0));
        flow.Viscosity.Select(v => v.Value).ShouldBe(flow.Viscosity.Select(v => v.Value).OrderDescending());
    });

    [Fact]
    public void SingleIngredient_TwiceInABlend_GivesItsOwnValues() => Gen.Int[0, Fats.Length - 1].Sample(i =>
    {
        var one = TestFat.Blend((Fats[i], 1));
        var twice = TestFat.Blend((Fats[i], 0.3), (Fats[i], 0.7));

        IodineValue.Of(twice).Value!.Value.ShouldBe(IodineValue.Of(one).Value!.Value, Rounding);
        Same(BlendDensity.Of(twice).Values, BlendDensity.Of(one).Values, 0.0002);
    });

    private static void Same(IReadOnlyList<TemperatureFigure> a, IReadOnlyList<TemperatureFigure> b, double relative)
    {
        a.Count.ShouldBe(b.Count);
        for (var i = 0; i < a.Count; i++)
        {
            a[i].Temperature.ShouldBe(b[i].Temperature);
            a[i].Value.ShouldBe(b[i].Value, relative * b[i].Value);
        }
    }
}
