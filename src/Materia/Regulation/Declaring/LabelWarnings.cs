using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Limits;

namespace Materia.Regulation.Declaring;

/// <summary>The words that a label must carry for what is in the formula.</summary>
internal static class LabelWarnings
{
    private static readonly string[] HydroxyAcids = ["GLYCOLIC ACID", "LACTIC ACID", "MANDELIC ACID"];

    /// <summary>The law's words first, then advice; a limit that is kept needs its words all the same.</summary>
    public static IReadOnlyList<LabelWarning> Of(RegulatedFormula formula, IReadOnlyList<LimitFinding> limits, Authority law)
    {
        var warnings = limits
            .Where(f => f.Warning is not null)
            .OrderByDescending(f => f.Authority == law)
            .Select(f => new LabelWarning(f.Warning!, f.Substance, [.. f.Contributions.Select(c => c.Ingredient)], f.Authority, f.Instrument, f.Entry, f.Evidence));
        return [.. warnings.Concat(law == Authority.Us ? SunAlert(formula) : []).DistinctBy(w => (w.Text, w.Authority))];
    }

    // The alert is guidance of 2005 on products that stay on the skin; its words were seen as quoted in a review.
    private static IEnumerable<LabelWarning> SunAlert(RegulatedFormula formula)
    {
        var acids = formula.Lines.Where(l => l.Percent > 0 && MaterialPartShare.Of(l.Ingredient, formula.Release)
            .Any(p => HydroxyAcids.Contains(p.InciName?.ToUpperInvariant() ?? string.Empty, StringComparer.Ordinal))).Select(l => l.Name).ToList();
        if (acids.Count > 0 && formula.Use is { Exposure: Exposure.LeaveOn, Site: not BodySite.Hair })
        {
            yield return new LabelWarning(
                "A sunburn alert as the guidance words it: the skin may burn more easily; use a sunscreen and cover up while using the product and for a week afterwards.",
                "alpha hydroxy acids", acids, Authority.Opinion, "label-consultancy-pages", "guidance of January 2005 (US-WARN-06)", Evidence.Secondary);
        }
    }
}
