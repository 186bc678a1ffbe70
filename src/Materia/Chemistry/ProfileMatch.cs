using Materia.Catalogue;

namespace Materia.Chemistry;

/// <summary>An ingredient whose fatty-acid profile lies near a measured one.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Distance">The distance of the two profiles in percentage points; see <see cref="Nearest"/>.</param>
public sealed record ProfileMatch(Ingredient Ingredient, double Distance)
{
    /// <summary>
    /// Ranks the release's ingredients that have a sample profile by their distance to a measured one, nearest first:
    /// d = √Σ(x − y)², over chain totals (isomers added up), in percentage points.
    /// </summary>
    /// <param name="measured">Symbols of acids and their shares [%]; a symbol without a position is a total.</param>
    /// <param name="release">The release to compare with.</param>
    /// <param name="limit">How many to give at most.</param>
    public static IReadOnlyList<ProfileMatch> Nearest(IReadOnlyDictionary<string, double> measured, Release release, int limit) => throw new NotImplementedException();
}
