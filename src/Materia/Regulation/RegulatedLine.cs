using Materia.Catalogue;

namespace Materia.Regulation;

/// <summary>One material of a formula, as rules see it.</summary>
/// <param name="Name">What results call it: the ingredient's id, or the maker's own name for it.</param>
/// <param name="Percent">Its share of the formula by mass [%], exact.</param>
/// <param name="Ingredient">What is known of it.</param>
public sealed record RegulatedLine(string Name, decimal Percent, Ingredient Ingredient);
