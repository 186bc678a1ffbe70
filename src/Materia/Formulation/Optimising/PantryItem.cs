using Materia.Formulation.OwnMaterials;

namespace Materia.Formulation.Optimising;

/// <summary>A material at hand: one of the catalogue, or the maker's own.</summary>
public sealed record PantryItem
{
    /// <summary>The id of an ingredient of the catalogue.</summary>
    public string? Ingredient { get; init; }

    /// <summary>A material that the catalogue lacks; stands in place of <c>ingredient</c>.</summary>
    public OwnMaterial? Own { get; init; }

    /// <summary>Its price for a kilogram, over nought, in the maker's currency; needed where cost is a target.</summary>
    public decimal? PricePerKilogram { get; init; }
}
