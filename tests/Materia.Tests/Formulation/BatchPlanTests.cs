using CsCheck;
using Materia.Formulation;
using Materia.Formulation.Batches;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class BatchPlanTests
{
    private static readonly FormulaLine[] Mask = [Percent("cupuacu-butter", 30), Percent("babassu-oil", 22.5m), Percent("kaolin", 8), Balance("sunflower-oil")];

    // Worked by hand: of 2500 steps of 0.1 g, 30 % owes 750, 22.5 % 562.5, 8 % 200 and 39.5 % 987.5; the tied step goes to the larger share.
    [Fact]
    public void Evaluate_Batch_GivesWeightsThatAddUpExactly()
    {
        var plan = Plan(Of(Mask) with { Batch = new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m, LossPercent = 3 } });

        plan.Lines.Select(l => (l.Ingredient, l.Mass)).ShouldBe(
        [
            ("cupuacu-butter", new Mass(75.0m, "g")),
            ("babassu-oil", new Mass(56.2m, "g")),
            ("kaolin", new Mass(20.0m, "g")),
            ("sunflower-oil", new Mass(98.8m, "g")),
        ]);
        plan.Lines.Select(l => l.PercentAchieved).ShouldBe([30m, 22.48m, 8m, 39.52m]);
        plan.Total.ShouldBe(new Mass(250m, "g"));
        plan.ExpectedYield.ShouldBe(new Mass(242.5m, "g"));
        plan.MassForFullYield.ShouldBe(new Mass(257.8m, "g"));
        plan.Warnings.ShouldBeEmpty();
    }

    [Fact]
    public void Evaluate_AnyBatch_SumsExactlyAndStaysWithinOneStep() =>
        Gen.Select(Gen.Int[1, 9999].List[2, 12], Gen.Int[1, 5_000_000], Gen.OneOf(0.01m, 0.1m, 0.5m, 1m)).Sample((shares, mass, step) =>
        {
            var ids = TestCatalogue.Release.Content.Ingredients.Select(i => i.Id).ToArray();
            var formula = Of([.. shares.Select((s, i) => Mass(ids[i], s))]) with { Batch = new() { Mass = mass, Unit = "g", ScaleResolution = step } };
            var normalised = Normalised(formula);
            var plan = Plan(formula);
            return plan.Lines.Sum(l => l.Mass.Value) == plan.Total!.Value
                && plan.Lines.Zip(normalised.Lines).All(p => Math.Abs(p.First.Mass.Value - (p.Second.Percent * plan.Total.Value / 100)) < step)
                && plan.Lines.All(l => l.Mass.Value % step == 0);
        });

    [Fact]
    public void Evaluate_GramsAndKilograms_GiveTheSameWeights()
    {
        var grams = Plan(Of(Mask) with { Batch = new() { Mass = 333, Unit = "g", ScaleResolution = 0.1m } });
        var kilograms = Plan(Of(Mask) with { Batch = new() { Mass = 0.333m, Unit = "kg", ScaleResolution = 0.0001m } });

        kilograms.Lines.Select(l => l.Mass.Value * 1000).ShouldBe(grams.Lines.Select(l => l.Mass.Value));
        kilograms.Total!.Unit.ShouldBe("kg");
    }

    [Fact]
    public void Evaluate_Ounces_AreNamedByTheirUcumCode() =>
        Plan(Of(Mask) with { Batch = new() { Mass = 8, Unit = "oz" } }).Total.ShouldBe(new Mass(8m, "[oz_av]"));

    [Fact]
    public void Evaluate_MassBetweenSteps_IsRoundedAndSaysSo()
    {
        var plan = Plan(Of(Mask) with { Batch = new() { Mass = 250.03m, Unit = "g", ScaleResolution = 0.1m } });

        plan.Total.ShouldBe(new Mass(250.0m, "g"));
        plan.Warnings.ShouldHaveSingleItem().ShouldContain("from 250.03 to 250 g");
    }

    [Theory]
    [InlineData(0.05, "cannot be weighed")]
    [InlineData(0.5, "only 1 step of the scale (1 g)")]
    [InlineData(4.5, "only 9 steps of the scale (1 g), so rounding alone can shift it by up to 11 %")]
    public void Evaluate_FewStepsOfTheScale_Warns(double percent, string expected)
    {
        var plan = Plan(Of(Percent("lavender-oil", (decimal)percent), Balance("olive-oil")) with { Batch = new() { Mass = 200, Unit = "g", ScaleResolution = 1 } });

        plan.Warnings.ShouldHaveSingleItem().ShouldContain(expected);
    }

    [Fact]
    public void Evaluate_TenSteps_DoesNotWarn() =>
        Plan(Of(Percent("lavender-oil", 5), Balance("olive-oil")) with { Batch = new() { Mass = 200, Unit = "g", ScaleResolution = 1 } }).Warnings.ShouldBeEmpty();

    [Fact]
    public void Evaluate_NoBatch_SaysWhatToAdd() => Plan(Of(Mask)).Absent.ShouldNotBeNull().ShouldContain("\"scaleResolution\"");

    [Fact]
    public void Evaluate_NoLoss_NeedsNoMore() =>
        Plan(Of(Mask) with { Batch = new() { Mass = 250, Unit = "g" } }).MassForFullYield.ShouldBeNull();

    [Fact]
    public void Evaluate_Explain_ShowsTheArithmetic()
    {
        var plan = Plan(Of(Mask) with { Batch = new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m } }, explain: true);

        plan.Steps.ShouldNotBeNull().Select(s => s.What).ShouldBe(
            ["steps of the scale in the batch", "weight of cupuacu-butter", "weight of babassu-oil", "weight of kaolin", "weight of sunflower-oil"]);
        plan.Steps[2].Arithmetic.ShouldBe("22.5 × 2500 / 100 = 562.5, given 562; 562 × 0.1 g = 56.2 g");
    }

    internal static BatchPlan Plan(Formula formula, bool explain = false) =>
        Evaluator.Evaluate(Normalised(formula), TestCatalogue.Release, new() { Sections = [BatchPlan.Section], Explain = explain }).Of(BatchPlan.Section).ShouldNotBeNull();
}
