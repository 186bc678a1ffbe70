using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Preserving;

/// <summary>The water in one material [% of it].</summary>
/// <param name="Range">From least to greatest.</param>
/// <param name="Basis">What it rests on.</param>
/// <param name="IsKnown">False where the material may hold water and nothing says how much.</param>
/// <param name="Stored">The stored figure, where there is one.</param>
internal sealed record WaterOfMaterial(ShareRange Range, string Basis, bool IsKnown, Figure? Stored = null)
{
    private static readonly WaterOfMaterial Dry = new(ShareRange.None, "holds no water by its kind", true);

    public static WaterOfMaterial Of(FormulaPart part)
    {
        if (part.Part.IsWater)
        {
            return new WaterOfMaterial(new ShareRange(100, 100, 100), "water itself", true);
        }

        if (part.Ingredient is not { } ingredient)
        {
            return Dry;
        }

        if (StoredFigures.Find(ingredient, Property.WaterContent) is { } figure)
        {
            return new WaterOfMaterial(new ShareRange(figure.Least(), figure.Central(), figure.Greatest()), "water content", true, figure);
        }

        if (ingredient.Constituents.FirstOrDefault(IsWater) is { } water)
        {
            var typical = water.Typical ?? ((water.Low ?? 0) + (water.High ?? 100)) / 2;
            return new WaterOfMaterial(new ShareRange(water.Low ?? typical, typical, water.High ?? typical), "water among its constituents", true);
        }

        return ByKind(ingredient);
    }

    private static WaterOfMaterial ByKind(Ingredient ingredient)
    {
        if (ingredient.Kind == IngredientKind.Hydrosol)
        {
            return new WaterOfMaterial(new ShareRange(100, 100, 100), "a hydrosol counts as water", true);
        }

        var mayBeWatery = ingredient.Kind is IngredientKind.Extract or IngredientKind.Protein or IngredientKind.Surfactant or IngredientKind.Conditioner;
        if (!mayBeWatery || ingredient.FattyAcidProfiles.Count > 0 || ingredient.Handling.Any(h => h.Phase is ProcessPhase.Oil or ProcessPhase.Melt or ProcessPhase.Powder))
        {
            return Dry;
        }

        return StoredFigures.Find(ingredient, Property.ActiveContent) is { } active
            ? new WaterOfMaterial(new ShareRange(0, Math.Max(0, 100 - active.Central()), Math.Max(0, 100 - active.Least())), "what its active content leaves, which need not all be water", active.Least() >= 100, active)
            : new WaterOfMaterial(new ShareRange(0, 0, 100), "nothing says how much water it holds", false);
    }

    private static bool IsWater(Constituent constituent) =>
        constituent.Cas == MaterialPartShare.WaterCas || string.Equals(constituent.Substance, "water", StringComparison.OrdinalIgnoreCase);
}
