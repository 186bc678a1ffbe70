using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Batches;
using Materia.Regulation.Limits;
using Materia.Tests.Regulation;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

/// <summary>What rounding to the scale does, and what mends it; all values worked by hand.</summary>
public sealed class BatchRoundingTests
{
    // 10 steps among four quarters owe 2.5 each: two steps are left over and all remainders tie, so the earlier two get them.
    // 4 steps among 12.5, 37.5 and 50 owe 0.5, 1.5 and 2: one is left, the remainders tie and the larger share gets it.
    [Fact]
    public void Apportion_Ties_GoToTheLargerThenTheEarlier()
    {
        LargestRemainder.Apportion([25m, 25m, 25m, 25m], 10).ShouldBe([3, 3, 2, 2]);
        LargestRemainder.Apportion([12.5m, 37.5m, 50m], 4).ShouldBe([0, 2, 2]);
    }

    // Of 2500 steps 22.5 % owes 562.5 and 39.5 % owes 987.5; the larger share gets the step: 562 are 22.48 %, 988 are 39.52 %.
    // 0.02 points of 22.5 are 0.09 %, of 39.5 they are 0.05 %.
    [Fact]
    public void Evaluate_Rounding_SaysWhatItDidToEachShare()
    {
        var plan = BatchPlanTests.Plan(
            Of(Percent("cupuacu-butter", 30), Percent("babassu-oil", 22.5m), Percent("kaolin", 8), Balance("sunflower-oil")) with { Batch = new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m } });

        plan.Lines.Select(l => (l.Percent, l.Shift, l.ShiftPercent)).ShouldBe([(30m, 0m, 0m), (22.5m, -0.02m, -0.09m), (8m, 0m, 0m), (39.5m, 0.02m, 0.05m)]);
        plan.Rounding.ShouldNotBeNull().LargestShift.ShouldBe(0.02m);
        plan.Rounding!.LargestShiftPercent.ShouldBe(0.09m);
        plan.Rounding.Limits.ShouldBeEmpty();
    }

    // 0.47 % of 1000 steps owes 4.7 and gets 5, which is 0.5 %: over the limit of 0.48 %, under which four steps (0.4 g) fit.
    [Fact]
    public void Evaluate_RoundedOverALimit_SaysSoAndWhatStillFits()
    {
        var release = WithLimit(0.48m);
        var plan = Plan(Small, release);

        var crossed = plan.Rounding!.Limits.ShouldHaveSingleItem();
        (crossed.Before, crossed.After, crossed.Crossed, crossed.AmountBefore, crossed.AmountAfter).ShouldBe((LimitStatus.Near, LimitStatus.Exceeded, true, 0.47m, 0.5m));
        crossed.WhatToDo.ShouldContain("at most 0.4 g of lavender-oil");
        plan.Warnings.ShouldContain(w => w.Contains("0.47 by the formula and 0.5 by the weights", StringComparison.Ordinal));
    }

    // The formula is over 0.45 % and so are the weights: nothing new, and the section limits has it.
    [Fact]
    public void Evaluate_OverBeforeAndAfter_IsNotRoundingsDoing() => Plan(Small, WithLimit(0.45m)).Rounding!.Limits.ShouldBeEmpty();

    // 0.44 % owes 4.4 steps and gets 4: 0.4 % is within a limit of 0.42 that the formula passes.
    [Fact]
    public void Evaluate_RoundedBelowALimit_SaysThatTheFormulaIsOver()
    {
        var change = Plan(Of(Percent("lavender-oil", 0.44m), Balance("olive-oil")) with { Batch = Hundred }, WithLimit(0.42m)).Rounding!.Limits.ShouldHaveSingleItem();

        (change.Before, change.After, change.Crossed).ShouldBe((LimitStatus.Exceeded, LimitStatus.Near, false));
        change.WhatToDo.ShouldContain("Change the formula");
    }

    // Ten steps are 1000/0.47 = 2127.7, so 2128 steps of the batch; 4.7 steps are 47 on a scale ten times finer. 4.7 × 2 = 9.4 is under ten,
    // 4.7 × 5 = 23.5 is not: one in five, 24 steps of it, and of both lines' 5 + 995 steps 976 are left for the oil.
    [Fact]
    public void Evaluate_FewSteps_NamesBatchScaleAndPremix()
    {
        var plan = BatchPlanTests.Plan(Small);
        var remedy = plan.Remedies.ShouldHaveSingleItem();

        (remedy.Ingredient, remedy.Steps).ShouldBe(("lavender-oil", 5));
        remedy.BatchMass.ShouldBe(new Mass(212.8m, "g"));
        remedy.FinerScale.ShouldBe(new Mass(0.01m, "g"));
        remedy.Premix.ShouldBe(new Premix("olive-oil", 5, new(1.0m, "g"), new(4.0m, "g"), new(2.4m, "g"), new(97.6m, "g")));
        plan.Warnings.ShouldHaveSingleItem().ShouldEndWith(
            "Make at least 212.8 g, use a scale that shows 0.01 g, or weigh a premix: 1 g of lavender-oil in 4 g of olive-oil; of it 2.4 g go in, with 97.6 g of olive-oil left to weigh.");
    }

    [Fact]
    public void Evaluate_LargerBatchOfTheRemedy_GivesTenSteps() =>
        BatchPlanTests.Plan(Small with { Batch = Hundred with { Mass = 212.8m } }).Remedies.ShouldBeEmpty();

    [Fact]
    public void Evaluate_PowderAmongOils_HasNoPremixInOil() =>
        BatchPlanTests.Plan(Of(Percent("silica", 0.47m), Balance("olive-oil")) with { Batch = Hundred }).Remedies.ShouldHaveSingleItem().Premix.ShouldBeNull();

    private static FormulaBatch Hundred => new() { Mass = 100, Unit = "g", ScaleResolution = 0.1m };

    private static Formula Small => Of(Percent("lavender-oil", 0.47m), Balance("olive-oil")) with { Batch = Hundred };

    // A limit on the oil itself, so that the shares are those of the line; the kind of material leaves nothing else open.
    private static Release WithLimit(decimal percent)
    {
        var content = TestCatalogue.Release.Content;
        var limit = Rules.Limit("oil-limit", percent, new Materia.Catalogue.Regulated.RegulatedMember { Name = "lavender oil", Ingredient = "lavender-oil" });
        return new Release(1, DateTimeOffset.UnixEpoch, "limit", content with { Limits = [limit] });
    }

    private static BatchPlan Plan(Formula formula, Release release) =>
        Evaluator.Evaluate(NormalisedFormula.Create(formula, release).Formula!, release, new() { Sections = [BatchPlan.Section] }).Of(BatchPlan.Section)!;
}
