using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>The stored figures that an ingredient's species were made of.</summary>
internal static class SpeciesInputs
{
    private static readonly Property[] Used = [Property.MiddlePositionSaturation, Property.UnsaponifiableMatter];

    /// <summary>The shares of the profiles used, printed triacylglycerols first, and the figures that place or dilute them.</summary>
    /// <param name="component">The component; its name goes with each figure.</param>
    public static IReadOnlyList<UsedFigure> Of(BlendComponent component)
    {
        var ingredient = component.Ingredient;
        var printed = PublishedComposition.Find(ingredient)?.Shares ?? [];
        var acids = SpeciesOfIngredient.Profile(ingredient, ProfilePart.Acids)?.Shares ?? [];
        var alcohols = SpeciesOfIngredient.Profile(ingredient, ProfilePart.Alcohols)?.Shares ?? [];
        return
        [
            .. printed.Select(s => StoredFigures.Cite(component.Name, s)),
            .. acids.Concat(alcohols).Select(s => StoredFigures.Cite(component.Name, s)),
            .. Used.Select(p => StoredFigures.Find(ingredient, p)).OfType<Figure>().Select(f => StoredFigures.Cite(component.Name, f)),
        ];
    }
}
