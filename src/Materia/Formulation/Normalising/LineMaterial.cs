using Materia.Catalogue;

namespace Materia.Formulation.Normalising;

/// <summary>What a line is made of: one ingredient, or the parts of a ready-made mixture.</summary>
/// <param name="Ingredient">The ingredient; for a mixture it has a name and a kind only.</param>
/// <param name="Own">True when the maker described it.</param>
/// <param name="Parts">The ingredients with their shares, which add up to 1.</param>
internal sealed record LineMaterial(Ingredient Ingredient, bool Own, IReadOnlyList<MaterialPart> Parts);

/// <summary>A part of a line's material.</summary>
/// <param name="Ingredient">What is known of it.</param>
/// <param name="Share">Its share of the line's mass, 0 to 1.</param>
public sealed record MaterialPart(Ingredient Ingredient, decimal Share);
