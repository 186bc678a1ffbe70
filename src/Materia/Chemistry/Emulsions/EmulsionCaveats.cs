using Materia.Catalogue;

namespace Materia.Chemistry.Emulsions;

/// <summary>Where HLB does not describe what is in a formula.</summary>
internal static class EmulsionCaveats
{
    public static IEnumerable<string> Of(EmulsionParts parts)
    {
        yield return "HLB tells the type of emulsion and a ratio to begin with; it says nothing of the dose or of how long the emulsion holds. Make a small batch and let it stand warm and cold.";
        if (parts.Emulsifiers.Any(e => EmulsionParts.IsLecithin(e.Ingredient!)))
        {
            yield return "Lecithin lies in double layers; its HLB depends on what else is there and is left out of the mean.";
        }

        if (parts.All.Any(p => p.Owner.Kind is IngredientKind.Emulsifier or IngredientKind.Conditioner && p.Charge == IonicCharge.Cationic))
        {
            yield return "Cationic emulsifiers hold by charge and by a gel of fatty alcohol; HLB does not describe them and they are left out of the mean.";
        }

        if (parts.All.Any(p => p.Kind == IngredientKind.Thickener && p.Inci.Contains("CROSSPOLYMER", StringComparison.Ordinal)))
        {
            yield return "Polymeric emulsifiers hold the drops in a gel; HLB does not describe them.";
        }

        if (parts.Emulsifiers.Any(e => e.Charge == IonicCharge.Anionic))
        {
            yield return "For anionic emulsifiers HLB comes from trials, and salts and pH shift it.";
        }

        if (parts.All.Any(p => p.Inci is "SODIUM HYDROXIDE" or "POTASSIUM HYDROXIDE" or "SODIUM BORATE" or "TRIETHANOLAMINE") && parts.Oils.Any(o => o.Kind is IngredientKind.FattyAcid or IngredientKind.Wax))
        {
            yield return "Alkali turns part of the free fatty acids into soap, an emulsifier that is made in the pot and is not counted here.";
        }

        if (parts.Oils.Any(o => o.Kind == IngredientKind.FattyAlcohol))
        {
            yield return "Fatty alcohols stand in the oil phase here; in a cream they build a gel with the emulsifier, which holds it more than any HLB.";
        }
    }
}
