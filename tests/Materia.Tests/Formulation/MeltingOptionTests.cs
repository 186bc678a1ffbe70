using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Formulation;
using Materia.Formulation.Sections;
using Materia.Tests.Chemistry;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

/// <summary>What an evaluation can be asked about melting.</summary>
public sealed class MeltingOptionTests
{
    // The curve is solved to about 1e-6 points; a hundredth of a point is what is shown.
    private const double Shown = 0.01;

    // Cocoa butter GH at 30 Cel: 29 % at a mixing weight of 0.1, 46.8 at 0.3, 59 at 0.5 (the model's sensitivities); it grows with the weight.
    [Fact]
    public void Evaluate_CocoaButterInTheThreeModels_IsHarderTheMoreItMixes()
    {
        var (pure, classes, ideal) = (Solid("cocoa-butter", MeltingModel.PureCrystals), Solid("cocoa-butter", MeltingModel.ClassSolutions), Solid("cocoa-butter", MeltingModel.IdealClasses));

        pure[40].ShouldBeLessThan(classes[40] - 10);
        classes[40].ShouldBeLessThan(ideal[40] - 10);
    }

    // With one species there is nothing to mix with, so the three models are one.
    [Fact]
    public void Evaluate_OneSpecies_IsTheSameInAllModels()
    {
        var fat = TestFat.Of("tristearin", Materia.Catalogue.IngredientKind.Butter, ("18:0", 100));
        var curves = Enum.GetValues<MeltingModel>().Select(m => Curve(BlendMelting.Of(new Blend([new("tristearin", 1, fat)], SeedCatalogue.Release, meltingModel: m)))).ToList();

        curves[0][30].ShouldBeGreaterThan(50);
        curves[1].Zip(curves[0]).ShouldAllBe(p => Math.Abs(p.First - p.Second) < Shown);
        curves[2].Zip(curves[0]).ShouldAllBe(p => Math.Abs(p.First - p.Second) < Shown);
    }

    [Theory]
    [InlineData("coconut-oil")]
    [InlineData("shea-butter")]
    [InlineData("palm-oil")]
    [InlineData("beeswax")]
    [InlineData("cetyl-alcohol")]
    public void Evaluate_EveryModel_GivesACurveThatNeverRises(string id)
    {
        foreach (var model in Enum.GetValues<MeltingModel>())
        {
            var curve = Solid(id, model);
            curve.Length.ShouldBe(91);
            curve.ShouldAllBe(p => p >= 0 && p <= 100);
            curve.Zip(curve.Skip(1)).ShouldAllBe(p => p.Second <= p.First);
        }
    }

    [Fact]
    public void Evaluate_ModelByDefault_IsTheRecommendedOneWithoutAWord()
    {
        var usual = Melting("cocoa-butter", new());
        var pure = Melting("cocoa-butter", new() { MeltingModel = MeltingModel.PureCrystals });

        usual.Model.ShouldBe(MeltingModel.ClassSolutions);
        pure.Model.ShouldBe(MeltingModel.PureCrystals);
        pure.Warnings.Except(usual.Warnings).ShouldHaveSingleItem().ShouldContain("for comparison and teaching");
    }

    [Theory]
    [InlineData(-10)]
    [InlineData(32)]
    [InlineData(80)]
    public void Evaluate_ExplainAt_ShowsTheEquilibriumThere(int temperature) =>
        Melting("cocoa-butter", new() { Explain = true, ExplainAt = temperature }).Steps.ShouldNotBeNull()
            .ShouldContain(s => s.What == FormattableString.Invariant($"Equilibrium at {temperature} Cel"));

    [Fact]
    public void Evaluate_PureCrystalsExplained_ShowsTheirEquation() =>
        Melting("cocoa-butter", new() { Explain = true, MeltingModel = MeltingModel.PureCrystals }).Steps![^1].Equation.ShouldNotContain("θ");

    [Theory]
    [InlineData(-11)]
    [InlineData(81)]
    public void Blend_ExplainAtOutsideTheCurve_Throws(int temperature) =>
        Should.Throw<ArgumentOutOfRangeException>(() => new Blend([new("cocoa-butter", 1, SeedCatalogue.Ingredient("cocoa-butter"))], SeedCatalogue.Release, explainAt: temperature));

    private static double[] Solid(string id, MeltingModel model) => Curve(Melting(id, new() { MeltingModel = model }));

    private static double[] Curve(BlendMelting melting) => [.. melting.SolidContent.Select(p => p.Percent)];

    private static BlendMelting Melting(string id, EvaluationOptions options)
    {
        var formula = NormalisedFormula.Create(Of(Percent(id, 100)), SeedCatalogue.Release).Formula.ShouldNotBeNull();
        return Evaluator.Evaluate(formula, SeedCatalogue.Release, options with { Sections = [ChemistrySections.Melting] }).Of(ChemistrySections.Melting).ShouldNotBeNull();
    }
}
