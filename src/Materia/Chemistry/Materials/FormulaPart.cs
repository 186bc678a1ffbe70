using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>A single material in a blend, mixtures taken apart, with its share of the whole.</summary>
/// <param name="Component">The component that brings it.</param>
/// <param name="Owner">The record of that component.</param>
/// <param name="Part">What it is.</param>
/// <param name="Share">Its share of the blend [%].</param>
internal sealed record FormulaPart(string Component, Ingredient Owner, MaterialPartShare Part, ShareRange Share)
{
    public Ingredient? Ingredient => Part.Ingredient;

    public IngredientKind? Kind => Part.Ingredient?.Kind;

    /// <summary>Its charge; a part without a record of its own, water apart, has that of the mixture.</summary>
    public IonicCharge? Charge => (Ingredient ?? (Part.IsWater ? null : Owner))?.Charge?.Charge;

    /// <summary>The INCI name in capitals; empty without one.</summary>
    public string Inci => (Part.InciName ?? Part.Ingredient?.InciName())?.ToUpperInvariant() ?? string.Empty;

    /// <summary>All single materials of a blend, in the order of its components.</summary>
    public static IReadOnlyList<FormulaPart> Of(Blend blend)
    {
        var parts = new List<FormulaPart>();
        foreach (var component in blend.Components.Where(c => c.MassFraction > 0))
        {
            // A mass fraction that was a decimal comes back as the same decimal: fifteen digits survive the double.
            var percent = (decimal)(component.MassFraction / blend.TotalMass) * 100;
            parts.AddRange(MaterialPartShare.Of(component.Ingredient, blend.Release)
                .Select(p => new FormulaPart(component.Name, component.Ingredient, p, new ShareRange(p.Low * percent / 100, p.Typical * percent / 100, p.High * percent / 100))));
        }

        return parts;
    }
}
