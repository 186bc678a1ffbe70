using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Formulation.Optimising;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Optimising;

/// <summary>The figures of searches are those of evaluations.</summary>
public class FigureModelTests
{
    private static readonly (string Id, double Percent)[] Lines =
        [("mango-butter", 25), ("shea-butter", 20), ("coconut-oil", 14.5), ("olive-oil", 27.5), ("beeswax", 5), ("cetyl-alcohol", 3), ("kaolin", 5)];

    private static readonly Blend Whole = new([.. Lines.Select(l => new BlendComponent(l.Id, l.Percent / 100, SeedCatalogue.Ingredient(l.Id)))], SeedCatalogue.Release);

    // The curve of an evaluation is interpolated between solved temperatures by up to a twentieth of a point.
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(32)]
    [InlineData(40)]
    public void At_SolidContent_IsThatOfTheEvaluation(int temperature) =>
        At(new(BlendProperty.SolidContent, temperature)).ShouldBe(BlendMelting.Of(Whole).SolidContent.Single(p => p.Temperature == temperature).Percent, 0.05);

    // Both find the temperature to a few hundredths of a kelvin.
    [Fact]
    public void At_ClearPoint_IsThatOfTheEvaluation() =>
        At(new(BlendProperty.ClearPoint)).ShouldBe(BlendMelting.Of(Whole).ClearPoint!.Value!.Value, 0.1);

    // Results are rounded to the second, third or fourth decimal; the tolerance is half of the last place and a little.
    [Fact]
    public void At_MeansOfComposition_AreThoseOfTheEvaluation()
    {
        At(new(BlendProperty.IodineValue)).ShouldBe(IodineValue.Of(Whole).Value!.Value, 0.006);
        At(new(BlendProperty.SaponificationValue)).ShouldBe(SaponificationValue.Of(Whole).Value!.Value, 0.006);
        At(new(BlendProperty.Oxidisability)).ShouldBe(BlendOxidation.Of(Whole).CoxValue.Value!.Value, 0.0006);
        At(new(BlendProperty.Density, 25)).ShouldBe(BlendDensity.Of(Whole).Values.Single(v => v.Temperature == 25).Value, 0.00006);
        var acids = FattyAcidComposition.Of(Whole);
        At(new(BlendProperty.Saturated)).ShouldBe(acids.Classes!.Saturated.Percent, 0.0006);
        At(new(BlendProperty.Polyunsaturated)).ShouldBe(acids.Classes.Polyunsaturated.Percent, 0.0006);
    }

    // Three significant digits, and the powders' volume at the temperature itself rather than the lowest given: under 1 %.
    [Fact]
    public void At_Viscosity_IsThatOfTheEvaluation()
    {
        var printed = BlendFlow.Of(Whole).Viscosity.Single(v => v.Temperature == 70).Value;
        Math.Exp(At(new(BlendProperty.Viscosity, 70))).ShouldBe(printed, 0.01 * printed);
    }

    [Fact]
    public void At_MaterialWithoutTheFigure_SaysHowMuchIsCovered()
    {
        var model = new FigureModel(SeedCatalogue.Release, [new MaterialColumn(SeedCatalogue.Ingredient("olive-oil")), new MaterialColumn(Unknown())], [new(BlendProperty.IodineValue)]);
        var (values, covers) = (new double[1], new double[1]);

        model.At([75, 25], values, covers);

        covers[0].ShouldBe(0.75, 1e-9);
    }

    private static Ingredient Unknown() => new()
    {
        Id = "unknown fat",
        Kind = IngredientKind.Butter,
        Names = [new() { Text = "unknown fat", Kind = NameKind.Common, Language = "en", Evidence = Evidence.Secondary, Source = "own" }],
    };

    private static double At(BlendFigure figure)
    {
        var model = new FigureModel(SeedCatalogue.Release, [.. Lines.Select(l => new MaterialColumn(SeedCatalogue.Ingredient(l.Id)))], [figure]);
        var (values, covers) = (new double[1], new double[1]);
        model.At([.. Lines.Select(l => l.Percent)], values, covers);
        return values[0];
    }
}
