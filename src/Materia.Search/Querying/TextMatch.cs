namespace Materia.Search.Querying;

/// <summary>The ingredients that a text matches.</summary>
/// <param name="Query">The text, as it was read when it matched.</param>
/// <param name="Grades">How well each name fits it.</param>
/// <param name="Ranked">The ingredients, in the order of their ordinals.</param>
/// <param name="AsTyped">False when typing errors had to be forgiven to find anything, or nothing was found.</param>
internal sealed record TextMatch(TextQuery Query, Grades Grades, IReadOnlyList<RankedIngredient> Ranked, bool AsTyped);

/// <summary>An ingredient that matches.</summary>
/// <param name="Ingredient">Its ordinal.</param>
/// <param name="Rank">Its rank, see <see cref="NameOrder"/>.</param>
/// <param name="Name">
/// The document number of the name to show: of those that match best, the one of the first kind; where several names match
/// together, the ingredient's first.
/// </param>
internal readonly record struct RankedIngredient(int Ingredient, long Rank, int Name);
