using System.Runtime.CompilerServices;
using Materia.Catalogue;

namespace Materia.Regulation.Contents;

/// <summary>
/// All that a material consists of, as far as it is known: itself, its parts, and the constituents of its oils; with how much of it
/// nobody has accounted for.
/// </summary>
/// <param name="Shares">The material itself first, then its parts, then the constituents.</param>
/// <param name="Unaccounted">The share that may be fragrance substances which no statement names [%]; 0 for what holds none.</param>
/// <param name="IsMixtureOfUnknownParts">True for a mixture whose one name lists several ingredients and whose shares are not known: anything may be in it.</param>
internal sealed record IngredientContents(IReadOnlyList<ContentShare> Shares, decimal Unaccounted, bool IsMixtureOfUnknownParts)
{
    private static readonly ConditionalWeakTable<Ingredient, IngredientContents> Known = [];

    /// <summary>The contents of a material, worked out once for as long as its release lives.</summary>
    public static IngredientContents Of(Ingredient ingredient, Release release) =>
        Known.TryGetValue(ingredient, out var known) ? known : Known.GetValue(ingredient, i => ContentReading.Read(i, release));
}
