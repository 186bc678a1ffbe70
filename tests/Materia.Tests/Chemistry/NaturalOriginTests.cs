using Materia.Chemistry;
using static Materia.Tests.Chemistry.ProductMaterials;

namespace Materia.Tests.Chemistry;

/// <summary>ISO 16128 content; the examples are those of ../shared/science/properties.md, (k).</summary>
public class NaturalOriginTests
{
    [Fact]
    public void Of_ThreeIndices_GivesThePrintedContent()
    {
        // 60 with 1, 30 with 0.75, 10 with 0: 82.5 %.
        var origin = NaturalOrigin.Of(Blend(("soya-oil", 60), ("three-quarters", 30), ("mineral-oil", 10)));

        origin.WithWater.Value.ShouldBe(82.5);
        origin.NotWhollyNatural.Select(s => (s.Ingredient, s.Index)).ShouldBe([("three-quarters", 0.75m), ("mineral-oil", 0m)]);
    }

    [Fact]
    public void Of_WithWater_GivesBothContents()
    {
        // 70 water, 20 with 1, 8 with 0.8, 2 with 0: 96.4 %, without water 26.4/30 = 88.0 %.
        var origin = NaturalOrigin.Of(Blend(("water", 70), ("soya-oil", 20), ("polysorbate-80", 8), ("mineral-oil", 2)));

        (origin.WithWater.Value, origin.WithoutWater.Value, origin.FormulationWater).ShouldBe((96.4, 88.0, 70m));
        origin.WithWater.Steps.ShouldNotBeNull().ShouldHaveSingleItem().Arithmetic.ShouldEndWith("96.4 %");
    }

    [Fact]
    public void Of_IndexMissingOfMoreThanATwentieth_GivesBoundsOnly()
    {
        var origin = NaturalOrigin.Of(Blend(("soya-oil", 90), ("glycerin", 10)));

        (origin.WithWater.Value, origin.WithWater.Low, origin.WithWater.High, origin.WithWater.Coverage).ShouldBe((null, 90.0, 100.0, 0.9));
        origin.WithWater.Absent.ShouldNotBeNull().ShouldContain("glycerin");
    }

    [Fact]
    public void Of_IndexMissingOfLittle_CountsItAsNone()
    {
        var origin = NaturalOrigin.Of(Blend(("soya-oil", 96), ("glycerin", 4)));

        origin.WithWater.Value.ShouldBe(96.0);
        origin.WithWater.Warnings.ShouldHaveSingleItem().ShouldContain("counts as 0");
    }

    [Fact]
    public void Of_WaterAlone_HasNothingWithoutIt() => NaturalOrigin.Of(Blend(("water", 100))).WithoutWater.Absent.ShouldNotBeNull();

    // 70 % water and 30 % benzoate without an index, as parts; the water in a mixture is no formulation water.
    [Fact]
    public void Of_Mixture_CountsItsParts()
    {
        var origin = NaturalOrigin.Of(Blend(("soya-oil", 90), ("benzoate-solution", 10)));

        (origin.WithWater.Value, origin.WithWater.Coverage, origin.FormulationWater).ShouldBe((97.0, 0.97, 0m));
    }
}
