using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>What an ingredient of each kind is expected to carry, in the order in which a gap matters.</summary>
internal static class ExpectedMeasures
{
    private static readonly Measure[] Everything =
    [
        Measure.LabelName, Measure.Description, Measure.Functions, Measure.Origin, Measure.Usage, Measure.Handling, Measure.Of(Property.ShelfLife),
    ];

    /// <summary>The kinds whose figures count as those of lipids.</summary>
    public static IReadOnlyList<IngredientKind> LipidKinds { get; } =
        [IngredientKind.Butter, IngredientKind.Oil, IngredientKind.Wax, IngredientKind.FattyAlcohol, IngredientKind.FattyAcid];

    /// <summary>The measures expected of a kind.</summary>
    public static IEnumerable<Measure> Of(IngredientKind kind) => Special(kind).Concat(Everything);

    /// <summary>
    /// The order in which work pays: 1 composition and melting of lipids; 2 constituents of essential oils; 3 HLB and required HLB;
    /// 4 what else a computation, a limit or a search by property rests on; 5 the rest of the record.
    /// </summary>
    public static int Class(IngredientKind kind, Measure measure) => measure switch
    {
        _ when measure == Measure.FattyAcidProfile || (measure == Measure.Melting && LipidKinds.Contains(kind)) => 1,
        _ when measure == Measure.Constituents && kind == IngredientKind.EssentialOil => 2,
        { Name: "hlb" or "required-hlb" } => 3,
        _ when Everything.Any(m => m.Name == measure.Name) => 5,
        _ => 4,
    };

    private static Measure[] Special(IngredientKind kind) => kind switch
    {
        IngredientKind.Butter =>
            [Measure.FattyAcidProfile, Measure.Melting, P(Property.RequiredHlb), P(Property.IodineValue), P(Property.SaponificationValue), P(Property.Density)],
        IngredientKind.Oil =>
            [Measure.FattyAcidProfile, P(Property.RequiredHlb), P(Property.IodineValue), P(Property.SaponificationValue), P(Property.Density), P(Property.Viscosity)],
        IngredientKind.Wax => [Measure.Melting, P(Property.RequiredHlb), P(Property.SaponificationValue)],
        IngredientKind.FattyAlcohol or IngredientKind.FattyAcid => [Measure.Melting, P(Property.RequiredHlb), P(Property.MolarMass)],
        IngredientKind.Ester or IngredientKind.Hydrocarbon => [P(Property.RequiredHlb), P(Property.Density)],
        IngredientKind.EssentialOil => [Measure.Constituents, P(Property.Density), P(Property.FlashPoint)],
        IngredientKind.Resin => [Measure.Constituents, Measure.Melting],
        IngredientKind.Emulsifier => [P(Property.Hlb), Measure.Charge],
        IngredientKind.Surfactant or IngredientKind.Conditioner => [Measure.Charge, P(Property.ActiveContent), P(Property.Ph)],
        IngredientKind.Clay => [P(Property.CationExchangeCapacity), P(Property.SwellingVolume), P(Property.Ph), P(Property.OilAbsorption)],
        IngredientKind.Powder or IngredientKind.Starch => [P(Property.OilAbsorption), P(Property.Density)],
        IngredientKind.Preservative => [P(Property.EffectivePh), P(Property.WaterSolubility)],
        IngredientKind.Thickener => [Measure.Charge, P(Property.Ph)],
        IngredientKind.Humectant or IngredientKind.Chelator => [P(Property.MolarMass), P(Property.WaterSolubility)],
        IngredientKind.PhAdjuster => [P(Property.MolarMass), P(Property.DissociationConstant)],
        IngredientKind.Protein or IngredientKind.Hydrosol => [P(Property.Ph)],
        IngredientKind.Active => [P(Property.MolarMass), P(Property.WaterSolubility), P(Property.EffectivePh)],
        IngredientKind.Solvent or IngredientKind.Silicone => [P(Property.Density)],
        _ => [],
    };

    private static Measure P(Property property) => Measure.Of(property);
}
