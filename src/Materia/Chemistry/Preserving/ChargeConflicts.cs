using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Preserving;

/// <summary>Materials of opposite charge in one water phase.</summary>
internal static class ChargeConflicts
{
    // An acid this strong is a salt with a negative charge in most products.
    private const decimal StrongAcid = 6;

    public static IReadOnlyList<string> Of(IReadOnlyList<FormulaPart> parts)
    {
        var conflicts = new List<string>();
        var anionic = Named(parts, IonicCharge.Anionic);
        var cationic = Named(parts, IonicCharge.Cationic);
        if (anionic.Count > 0 && cationic.Count > 0)
        {
            conflicts.Add($"{Written.List(cationic)} (cationic) and {Written.List(anionic)} (anionic) pair up: they can fall out as a sticky solid, break an emulsion, and take each other's effect. Keep to one charge, or use a pair that is known to stay clear and test it.");
        }

        var acids = parts.Where(p => p.Kind == IngredientKind.Preservative
            && p.Ingredient!.Properties.Any(f => f.Property == Property.DissociationConstant && f.Central() < StrongAcid)).Select(p => p.Part.Name).Distinct(StringComparer.Ordinal).ToList();
        if (acids.Count > 0 && cationic.Count > 0)
        {
            conflicts.Add($"Part of {Written.List(acids)} pairs with {Written.List(cationic)} and is lost as a preservative; test the product at the end of its shelf life.");
        }

        return conflicts;
    }

    private static List<string> Named(IReadOnlyList<FormulaPart> parts, IonicCharge charge) =>
        [.. parts.Where(p => p.Charge == charge && !IsMineral(p)).Select(p => p.Ingredient is null ? p.Owner.CommonName() : p.Part.Name).Distinct(StringComparer.Ordinal)];

    // The faces of clays are anionic and take up cationics, which a maker may want; it is no conflict of two dissolved materials.
    private static bool IsMineral(FormulaPart part) => part.Kind is IngredientKind.Clay or IngredientKind.Powder;
}
