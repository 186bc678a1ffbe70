using Materia.Formulation;
using Materia.Formulation.Batches;
using Materia.Formulation.Sections;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class WhippedTests
{
    // Squalane alone has the density that the test catalogue gives it, 0.81 g/mL at 20 Cel, so the expected values are worked by hand.
    private static readonly Formula Squalane = Of(Percent("squalane", 100));

    // Only binary rounding stands between the hand calculation and the result.
    private const double Rounding = 1e-9;

    [Fact]
    public void Evaluate_Overrun_LowersTheDensity()
    {
        var density = Evaluate(Squalane with { Whip = new() { OverrunPercent = 50 } }).Of(FormulaDensity.Section).ShouldNotBeNull();

        density.Whipped.ShouldNotBeNull().Value.Value.ShouldBe(0.54, Rounding);
        density.Whipped.AirPercent.ShouldBe(100.0 / 3, Rounding);
        density.Values[0].Value.ShouldBe(0.81, Rounding);
    }

    [Fact]
    public void Evaluate_NoOverrun_HasNoWhippedDensity() =>
        Evaluate(Squalane).Of(FormulaDensity.Section).ShouldNotBeNull().Whipped.ShouldBeNull();

    [Fact]
    public void Evaluate_WhippedExplained_ShowsTheDivision() =>
        Evaluate(Squalane with { Whip = new() { OverrunPercent = 50 } }, explain: true).Of(FormulaDensity.Section)!.Steps.ShouldNotBeNull()
            .ShouldContain(s => s.Arithmetic == "0.81 / (1 + 50 / 100) = 0.54 g/mL");

    // 100 mL less 5 % hold 95 mL of 0.54 g/mL, 51.3 g; 250 g less 3 % are 242.5 g: 4 full jars, 5 to take up all.
    [Fact]
    public void Evaluate_JarVolume_CountsTheJars()
    {
        var jars = Plan(new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m, LossPercent = 3, JarVolume = 100, Jars = 5 }).Jars.ShouldNotBeNull();

        jars.FillVolume.ShouldBe(95m);
        jars.MassInJar.ShouldBe(51.3, Rounding);
        (jars.Full, jars.Needed).ShouldBe((4, 5));
        Plan(new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m, LossPercent = 3, JarVolume = 100, Jars = 5 }).Warnings.ShouldContain(w => w.Contains("4 of the 5 jars"));
    }

    // Six jars take 6 × 51.3 = 307.8 g; with a loss of 5 % that is 324 g to weigh in.
    [Fact]
    public void Evaluate_JarsWithoutMass_SizesTheBatch()
    {
        var plan = Plan(new() { Jars = 6, JarVolume = 100, LossPercent = 5, ScaleResolution = 0.1m });

        plan.Total.ShouldNotBeNull().Value.ShouldBeInRange(324.0m, 324.1m);
        plan.Jars.ShouldNotBeNull().Full.ShouldBe(6);
        plan.Warnings.ShouldBeEmpty();
    }

    [Fact]
    public void Evaluate_JarsWithoutADensity_SaysWhyThereIsNoPlan()
    {
        var own = Own(new() { Name = "Unknown", Kind = Materia.Catalogue.IngredientKind.Ester });

        var plan = Evaluate(Of(own) with { Batch = new() { Jars = 6, JarVolume = 100 } }).Of(BatchPlan.Section).ShouldNotBeNull();

        plan.Absent.ShouldNotBeNull().ShouldContain("Give the batch a mass");
        plan.Lines.ShouldBeEmpty();
    }

    private static BatchPlan Plan(FormulaBatch batch) =>
        Evaluate(Squalane with { Batch = batch, Whip = new() { OverrunPercent = 50 } }).Of(BatchPlan.Section).ShouldNotBeNull();

    private static Evaluation Evaluate(Formula formula, bool explain = false) =>
        Evaluator.Evaluate(Normalised(formula), TestCatalogue.Release, new() { Explain = explain });
}
