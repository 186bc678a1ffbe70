using Materia.Catalogue.Regulated;
using Materia.Formulation.Sections;
using Materia.Regulation.Limits;

namespace Materia.Formulation.Batches;

/// <summary>What rounding to the scale did to the formula.</summary>
/// <param name="LargestShift">The largest change of a share, without its sign [percentage points].</param>
/// <param name="LargestShiftPercent">The largest change in percent of the share asked for, without its sign [%].</param>
/// <param name="Limits">The limits whose verdict differs between the formula and the weights; empty when none does.</param>
public sealed record BatchRounding(decimal LargestShift, decimal LargestShiftPercent, IReadOnlyList<RoundedLimit> Limits)
{
    internal static decimal Achieved(long part, long steps) => 100m * part / steps;

    internal static BatchRounding Of(EvaluationInput input, IReadOnlyList<long> parts, long steps)
    {
        var lines = input.Formula.Lines;
        decimal[] achieved = [.. parts.Select(p => Achieved(p, steps))];
        var shifts = lines.Zip(achieved, (l, a) => (Points: Math.Abs(a - l.Percent), Relative: Math.Abs(a - l.Percent) * 100 / l.Percent)).ToList();
        var largest = shifts.Max(s => s.Points);
        return new BatchRounding(
            decimal.Round(largest, 4), decimal.Round(shifts.Max(s => s.Relative), 2), largest == 0 ? [] : [.. RoundedLimit.Of(input, achieved, steps)]);
    }
}

/// <summary>A limit that rounding moved the formula across.</summary>
/// <param name="Id">The key of the limit.</param>
/// <param name="Substance">The substance as the instrument names it.</param>
/// <param name="Authority">Whose limit it is.</param>
/// <param name="Before">How the formula stands to it.</param>
/// <param name="After">How the weights stand to it.</param>
/// <param name="AmountBefore">The greatest share that counts, by the formula, in <paramref name="Unit"/>.</param>
/// <param name="AmountAfter">The same by the weights.</param>
/// <param name="Limit">The limit, in <paramref name="Unit"/>.</param>
/// <param name="Unit"><c>%</c> by mass; <c>1</c> for a sum of ratios.</param>
/// <param name="Crossed">True when rounding lifted it over the limit.</param>
/// <param name="WhatToDo">What to do, as a sentence.</param>
public sealed record RoundedLimit(
    string Id, string Substance, Authority Authority, LimitStatus Before, LimitStatus After, decimal AmountBefore, decimal AmountAfter, decimal? Limit, string Unit, bool Crossed, string WhatToDo)
{
    internal static IEnumerable<RoundedLimit> Of(EvaluationInput input, IReadOnlyList<decimal> achieved, long steps)
    {
        var before = input.Of(RegulationSections.Limits);
        if (before.Count == 0)
        {
            return [];
        }

        // A line that rounds to nothing takes its limits with it, so the two lists are matched by key and authority.
        var after = LimitFindings.Of(input.Formula.Regulated(input.Release, input.AsOf, achieved)).ToDictionary(f => (f.Id, f.Authority));
        return before
            .Select(b => (Before: b, After: after.GetValueOrDefault((b.Id, b.Authority))))
            .Where(p => p.After is not null && p.After.Status != p.Before.Status)
            .Select(p => Of(p.Before, p.After!, input.Formula.Batch!, steps));
    }

    private static RoundedLimit Of(LimitFinding before, LimitFinding after, NormalisedBatch batch, long steps)
    {
        var crossed = after.Status == LimitStatus.Exceeded;
        return new RoundedLimit(
            after.Id, after.Substance, after.Authority, before.Status, after.Status, before.Amount.High, after.Amount.High, after.Limit, after.Unit, crossed,
            crossed ? $"Rounding lifts it over the limit. {Cure(after, batch, steps)}"
            : before.Status == LimitStatus.Exceeded ? "The formula itself is over the limit and only rounding brings the weights below it. Change the formula, not the batch."
            : "Both stand; look at the limit before you change the batch or the scale.");
    }

    private static string Cure(LimitFinding after, NormalisedBatch batch, long steps)
    {
        var most = after.LargestPassing
            .Select(l => $"{Fault.Text(decimal.Floor(l.Percent * steps / 100) * batch.ScaleResolution)} {batch.Unit.Word} of {l.Ingredient}")
            .ToList();
        var weigh = most.Count == 0 ? string.Empty : $"Weigh at most {string.Join(", or at most ", most)} into this batch and make up the difference with another line, or ";
        return $"{weigh}{(most.Count == 0 ? "U" : "u")}se a finer scale or make a larger batch.";
    }
}
