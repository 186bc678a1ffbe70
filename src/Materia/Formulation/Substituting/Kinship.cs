using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Substituting;

/// <summary>Whether an ingredient may take another's place, and how much the two are for the same.</summary>
internal static class Kinship
{
    /// <summary>
    /// What <paramref name="candidate"/> has in common with <paramref name="missing"/>: two for each substitution group, one for each
    /// function, one for the same kind; <see langword="null"/> when it cannot take its place. Members of one group can; else it takes
    /// the same family of kinds, and outside the fats a function in common where both have any.
    /// </summary>
    public static int? Of(Ingredient missing, Ingredient candidate)
    {
        var groups = missing.SubstitutionGroups.Count(g => candidate.SubstitutionGroups.Any(o => o.Group == g.Group));
        var functions = missing.Functions.Count(f => candidate.Functions.Any(o => o.Function == f.Function));
        var fits = groups > 0
            || (SameFamily(missing.Kind, candidate.Kind)
                && (functions > 0 || Kinds.IsLipid(missing.Kind) || missing.Functions.Count == 0 || candidate.Functions.Count == 0));
        return fits && SameCharge(missing, candidate) ? (2 * groups) + functions + (missing.Kind == candidate.Kind ? 1 : 0) : null;
    }

    /// <summary>
    /// The mass of <paramref name="candidate"/> that does the job of one part of <paramref name="missing"/>, by the swap ratios of a group
    /// that both belong to, the least where there are several [1]; <see langword="null"/> where no group tells.
    /// </summary>
    public static double? SwapRatio(Ingredient missing, Ingredient candidate) =>
        missing.SubstitutionGroups
            .SelectMany(m => candidate.SubstitutionGroups.Where(c => c.Group == m.Group && m.SwapRatio > 0 && c.SwapRatio > 0).Select(c => (double?)(c.SwapRatio / m.SwapRatio)))
            .Min();

    /// <summary>Butters and oils stand in for each other in mixtures; powders for powders; else the same kind.</summary>
    private static bool SameFamily(IngredientKind a, IngredientKind b) =>
        a == b || (IsFat(a) && IsFat(b)) || (Kinds.IsPowder(a) && Kinds.IsPowder(b));

    private static bool IsFat(IngredientKind kind) => kind is IngredientKind.Butter or IngredientKind.Oil;

    private static bool SameCharge(Ingredient a, Ingredient b) => a.Charge is not { } charge || b.Charge is not { } other || charge.Charge == other.Charge;
}
