using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Optimising;

/// <summary>What one ingredient brings to a figure.</summary>
/// <param name="Concerned">Whether the figure is about materials of this kind.</param>
/// <param name="Value">Its own value, where it is known.</param>
/// <param name="Weight">What one gram of it weighs in the blend's mean.</param>
internal readonly record struct PartFigures(bool Concerned, double? Value, double Weight)
{
    private static readonly PartFigures Outside = new(false, null, 0);

    /// <summary>What <paramref name="material"/> brings to <paramref name="figure"/>.</summary>
    public static PartFigures Of(BlendFigure figure, Material material) => figure.Property switch
    {
        BlendProperty.IodineValue => Lipid(material, material.Iodine),
        BlendProperty.SaponificationValue => Lipid(material, material.Saponification),
        BlendProperty.Density => Density(material, figure.Temperature ?? 20),
        BlendProperty.Oxidisability => Acids(material, m => m.Shares!.Cox.Value),
        BlendProperty.Saturated => Acids(material, m => m.Shares!.Saturated.Value),
        BlendProperty.Monounsaturated => Acids(material, m => m.Shares!.Monounsaturated.Value),
        BlendProperty.Polyunsaturated => Acids(material, m => m.Shares!.Polyunsaturated.Value),
        BlendProperty.FattyAcid => Acids(material, m => Share(m.Shares!, figure.Acid!)),
        BlendProperty.RequiredHlb => Stored(material, Property.RequiredHlb, material.IsLipid),
        BlendProperty.OilAbsorption => Stored(material, Property.OilAbsorption, material.IsPowder),
        BlendProperty.WaterAbsorption => Stored(material, Property.WaterAbsorption, material.IsPowder),
        BlendProperty.CationExchangeCapacity => Stored(material, Property.CationExchangeCapacity, material.Ingredient.Kind == IngredientKind.Clay),
        BlendProperty.SwellingVolume => Stored(material, Property.SwellingVolume, material.Ingredient.Kind == IngredientKind.Clay),
        BlendProperty.Hlb => Stored(material, Property.Hlb, material.Ingredient.Kind == IngredientKind.Emulsifier),
        _ => Outside,
    };

    private static PartFigures Lipid(Material material, Titration? titration) =>
        material.IsLipid ? new(true, titration?.Value.Value, 1) : Outside;

    // Specific volumes add up: the mean of ρ weighs by volume.
    private static PartFigures Density(Material material, double temperature) =>
        material.Density is { } density && density.At(temperature).Value is var rho ? new(true, rho, 1 / rho) : new(true, null, 0);

    private static PartFigures Acids(Material material, Func<Material, double> value) =>
        !material.BearsFattyAcids ? Outside : material.AcidMass > 0 ? new(true, value(material), material.AcidMass) : new(true, null, 0);

    private static PartFigures Stored(Material material, Property property, bool concerned) =>
        !concerned ? Outside : new(true, StoredFigures.Find(material.Ingredient, property) is { } figure ? (double)figure.Central() : null, 1);

    private static double Share(AcidShares shares, string acid)
    {
        var row = Array.FindIndex(shares.Profile.Acids, a => a.Symbol == acid);
        return row >= 0 ? shares.Rows[row].Value : Array.Find(shares.Chains, c => c.Chain == acid).Share.Value;
    }
}
