using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation.Optimising;

/// <summary>A material whose share is varied or kept: one ingredient, or the parts of a ready-made mixture.</summary>
/// <param name="Ingredient">The ingredient; for a mixture its name and kind.</param>
/// <param name="Parts">What it consists of, with shares that add up to 1.</param>
/// <param name="PricePerKilogram">Its price, where one was given.</param>
internal sealed record MaterialColumn(Ingredient Ingredient, IReadOnlyList<MaterialPart> Parts, decimal? PricePerKilogram = null)
{
    public MaterialColumn(Ingredient ingredient)
        : this(ingredient, [new MaterialPart(ingredient, 1)])
    {
    }

    /// <summary>What results call it.</summary>
    public string Name => Ingredient.Id;
}
