using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Emulsions;

/// <summary>The materials of a formula by their part in an emulsion.</summary>
/// <param name="Oils">The oil phase: lipids, essential oils and silicones.</param>
/// <param name="Emulsifiers">The emulsifiers; a mixture with an HLB of its own, or of whose parts none is known as an emulsifier, counts as one.</param>
/// <param name="All">All single materials.</param>
internal sealed record EmulsionParts(IReadOnlyList<FormulaPart> Oils, IReadOnlyList<FormulaPart> Emulsifiers, IReadOnlyList<FormulaPart> All)
{
    public static EmulsionParts Of(Blend blend)
    {
        var all = FormulaPart.Of(blend);
        var whole = blend.Components.Where(c => c.MassFraction > 0 && IsWholeEmulsifier(c.Ingredient, blend.Release)).ToDictionary(c => c.Name, StringComparer.Ordinal);
        var single = all.Where(p => !whole.ContainsKey(p.Component)).ToList();
        return new EmulsionParts(
            [.. single.Where(p => IsOil(p.Kind))],
            [.. whole.Values.Select(Whole), .. single.Where(p => p.Kind == IngredientKind.Emulsifier)],
            all);
    }

    /// <summary>Whether HLB describes an emulsifier: it does not for lecithins, cationic ones and polymers.</summary>
    public static bool IsDescribed(Ingredient emulsifier) =>
        !IsLecithin(emulsifier) && emulsifier.Charge?.Charge is not (IonicCharge.Cationic or IonicCharge.Amphoteric);

    public static bool IsLecithin(Ingredient ingredient) => ingredient.InciName()?.Contains("lecithin", StringComparison.OrdinalIgnoreCase) == true;

    private static bool IsOil(IngredientKind? kind) => kind is { } k && (Kinds.IsLipid(k) || k is IngredientKind.EssentialOil or IngredientKind.Silicone);

    private static bool IsWholeEmulsifier(Ingredient ingredient, Release release) =>
        ingredient is { Kind: IngredientKind.Emulsifier, Parts.Count: > 0 }
        && (StoredFigures.Find(ingredient, Property.Hlb) is not null
            || MaterialPartShare.Of(ingredient, release).All(p => p.Ingredient?.Kind != IngredientKind.Emulsifier));

    private static FormulaPart Whole(BlendComponent component)
    {
        var percent = (decimal)component.MassFraction * 100;
        return new FormulaPart(
            component.Name,
            component.Ingredient,
            MaterialPartShare.Of(component.Ingredient),
            new ShareRange(percent, percent, percent));
    }
}
