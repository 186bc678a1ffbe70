namespace Materia.Regulation;

/// <summary>What one material brings of a substance.</summary>
/// <param name="Ingredient">What results call the material: the ingredient's id, or the maker's own name.</param>
/// <param name="Percent">The material's share of the formula [%].</param>
/// <param name="ShareOfIngredient">The share of the substance in the material [%], counted as the rule counts it.</param>
/// <param name="Amount">What comes of it in the formula [%].</param>
public sealed record Contribution(string Ingredient, decimal Percent, Amount ShareOfIngredient, Amount Amount);
