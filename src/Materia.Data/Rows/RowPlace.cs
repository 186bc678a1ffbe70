namespace Materia.Data.Rows;

/// <summary>Where a row of an ingredient stands.</summary>
/// <param name="Release">The number of the release.</param>
/// <param name="Ingredient">The ingredient's id.</param>
/// <param name="Ordinal">The place in the ingredient's list, from 0.</param>
internal readonly record struct RowPlace(int Release, string Ingredient, int Ordinal);
