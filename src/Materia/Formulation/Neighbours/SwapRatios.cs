using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Neighbours;

/// <summary>How much of one ingredient takes another's place, where the catalogue says so or it follows from active contents.</summary>
internal static class SwapRatios
{
    /// <summary>
    /// In a group both of whose ratios to the reference are known, their quotient; of several such groups the one in which the ratio lies
    /// furthest from 1, since it is the one that says something. Else the quotient of active contents, for one kind.
    /// </summary>
    public static SwapRatio? Of(Ingredient asked, Ingredient candidate)
    {
        SwapRatio? best = null;
        foreach (var own in asked.SubstitutionGroups)
        {
            var other = candidate.SubstitutionGroups.FirstOrDefault(g => g.Group == own.Group);
            if (own.SwapRatio is > 0 and { } from && other?.SwapRatio is > 0 and { } to)
            {
                var ratio = new SwapRatio(decimal.Round(to / from, 3), "substitution-group", own.Group, other.Text, Weaker(own, other));
                best = best is null || Distance(ratio.Value) > Distance(best.Value) ? ratio : best;
            }
        }

        return best ?? Active(asked, candidate);
    }

    private static SwapRatio? Active(Ingredient asked, Ingredient candidate) =>
        asked.Kind == candidate.Kind
        && StoredFigures.Find(asked, Property.ActiveContent) is { } own && own.Central() > 0
        && StoredFigures.Find(candidate, Property.ActiveContent) is { } other && other.Central() > 0
            ? new(decimal.Round(own.Central() / other.Central(), 3), "active-content", null, null, Weaker(own, other))
            : null;

    private static double Distance(decimal ratio) => Math.Abs(Math.Log((double)ratio));

    private static Evidence Weaker(Statement a, Statement b) => a.Evidence > b.Evidence ? a.Evidence : b.Evidence;
}
