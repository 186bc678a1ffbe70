using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Optimising;

/// <summary>The usual upper share of an ingredient: advice of the catalogue, which a search leaves unwillingly.</summary>
internal static class UsageCeilings
{
    /// <summary>The greatest usual share in this type of product, else in any [%]; <see langword="null"/> where the catalogue has none.</summary>
    public static double? Of(Ingredient ingredient, ProductUse? use) =>
        use is not null && ingredient.UsageLevels.FirstOrDefault(l => l.Use == use.Id)?.High is { } own
            ? (double)own
            : StoredFigures.Find(ingredient, Property.UsageLevel)?.High is { } any ? (double)any : null;
}
