using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Rollup;

namespace Materia.Regulation.Limits;

/// <summary>Limits whose shares add up as ratios: each share over its own limit, and all ratios together at most 1.</summary>
internal static class RatioFinding
{
    /// <summary>The finding for the limits of one group that name something in the formula.</summary>
    public static LimitFinding Of(IReadOnlyList<Limit> limits, RegulatedFormula formula)
    {
        var contributions = new List<ExactContribution>();
        foreach (var limit in limits.Where(l => l.MaxPercent > 0))
        {
            var sum = formula.Rollup.Of(limit);
            var perPercent = 1 / limit.MaxPercent!.Value;
            contributions.AddRange(sum.Contributions.Select(c => c with
            {
                Share = c.Share * perPercent,
                Amount = c.Amount * perPercent,
            }));
        }

        var amount = contributions.Aggregate(Amount.None, (sum, c) => sum + c.Amount);
        var first = LimitFindings.Describe(limits[0], formula);
        return first with
        {
            Id = limits[0].RatioGroup!,
            Substance = string.Join(", ", limits.Select(l => l.Substance)),
            Cas = null,
            Status = LimitFindings.Verdict(amount.High, 0, 1, below: false),
            Amount = amount.Trimmed(),
            Limit = 1,
            Unit = Units.One,
            Entry = string.Join("; ", limits.Select(l => l.Locator).OfType<string>().Distinct(StringComparer.Ordinal)),
            Contributions = [.. contributions.OrderByDescending(c => c.Amount.High).Select(c => c.Shown())],
            LargestPassing = LargestPassing.Of(contributions, 1, 0, below: false),
            Notes = [.. first.Notes, "Each share was divided by its own limit; the ratios of all such materials together must not pass 1."],
        };
    }
}
