using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Neighbours;

/// <summary>
/// The properties by which each sort of ingredient is compared. The steps are what a maker notices, as common practice has it, and do
/// not move with the spread of the catalogue: a release with more oils leaves the distance of two of them as it is.
/// </summary>
internal static class Axes
{
    /// <summary>The temperatures of solid contents [Cel]: a cool store, two rooms, skin, a hot car.</summary>
    public static IReadOnlyList<double> SolidTemperatures { get; } = [10, 20, 25, 32, 40];

    private const double SkinTemperature = 32;

    private static readonly Axis Melting = Plain("melting", Units.Celsius, 5, 1, MeltingOf);
    private static readonly Axis Density = new("density", 20, Units.GramPerMillilitre, 0.03, 0.5, false, i => i.Material.Density?.At(20).Value ?? i.Stored(Property.Density));
    private static readonly Axis Ph = Stored("ph", Property.Ph, 1, 1);
    private static readonly Axis LowestPh = Plain("effective-ph-low", Units.PhScale, 1, 1, i => i.Low(Property.EffectivePh));
    private static readonly Axis HighestPh = Plain("effective-ph-high", Units.PhScale, 1, 1, i => i.High(Property.EffectivePh));
    private static readonly Axis MolarMass = Ratio("molar-mass", Property.MolarMass, 2, 0.5);
    private static readonly Axis Solubility = Ratio("water-solubility", Property.WaterSolubility, 5, 0.5);
    private static readonly Axis Hlb = Stored("hlb", Property.Hlb, 1.5, 2);
    private static readonly Axis OilAbsorption = Stored("oil-absorption", Property.OilAbsorption, 15, 1);
    private static readonly Axis WaterAbsorption = Stored("water-absorption", Property.WaterAbsorption, 40, 1);
    private static readonly Axis UsageCeiling = Plain("usage-level-high", Units.Percent, 3, 0.5, i => i.High(Property.UsageLevel)) with { Logarithmic = true };

    /// <summary>Of fats, waxes, fatty alcohols and acids, esters and hydrocarbons.</summary>
    public static IReadOnlyList<Axis> Lipid { get; } =
    [
        .. SolidTemperatures.Select((t, n) => new Axis("solid-content", t, Units.Percent, 8, 0.6, false, i => i.Solids is { } solids ? Math.Round(solids[n], 2) : null)),
        Melting,
        new("viscosity", SkinTemperature, Units.MillipascalSecond, 1.5, 1, true, ViscosityOf),
        Plain("iodine-value", Units.GramPerHundredGram, 15, 1, i => i.Material.Iodine?.Value.Value),
        Plain("saponification-value", Units.MilligramPerGram, 15, 0.5, i => i.Material.Saponification?.Value.Value),
        Plain("saturated", Units.Percent, 10, 1, i => i.Material.Shares?.Saturated.Value),
        Plain("monounsaturated", Units.Percent, 10, 1, i => i.Material.Shares?.Monounsaturated.Value),
        Plain("polyunsaturated", Units.Percent, 10, 1, i => i.Material.Shares?.Polyunsaturated.Value),
        Density,
    ];

    /// <summary>Of emulsifiers.</summary>
    public static IReadOnlyList<Axis> Emulsifier { get; } = [Hlb, Melting, MolarMass];

    /// <summary>Of clays.</summary>
    public static IReadOnlyList<Axis> Clay { get; } =
    [
        Stored("cation-exchange-capacity", Property.CationExchangeCapacity, 15, 1.5), Stored("swelling-volume", Property.SwellingVolume, 4, 1.5),
        WaterAbsorption, OilAbsorption, Ph,
    ];

    /// <summary>Of powders and starches.</summary>
    public static IReadOnlyList<Axis> Powder { get; } = [OilAbsorption, WaterAbsorption, Stored("density", Property.Density, 0.4, 1), Ph];

    /// <summary>Of preservatives.</summary>
    public static IReadOnlyList<Axis> Preservative { get; } =
        [LowestPh, HighestPh, UsageCeiling, Stored("partition-coefficient", Property.PartitionCoefficient, 1, 0.5), Solubility];

    /// <summary>Of essential oils; their constituents are compared beside these.</summary>
    public static IReadOnlyList<Axis> EssentialOil { get; } = [Density, Stored("flash-point", Property.FlashPoint, 15, 0.25)];

    /// <summary>Of everything else.</summary>
    public static IReadOnlyList<Axis> Other { get; } =
        [Stored("active-content", Property.ActiveContent, 20, 1), MolarMass, Ph, LowestPh, HighestPh, Hlb, Solubility, Stored("density", Property.Density, 0.1, 0.5)];

    /// <summary>All of them, each once: the columns of a vector.</summary>
    public static IReadOnlyList<Axis> All { get; } = [.. new[] { Lipid, Emulsifier, Clay, Powder, Preservative, EssentialOil, Other }.SelectMany(a => a).Distinct()];

    /// <summary>The axes by which an ingredient of a kind is compared.</summary>
    public static IReadOnlyList<Axis> Of(IngredientKind kind) => kind switch
    {
        _ when Kinds.IsLipid(kind) => Lipid,
        IngredientKind.Emulsifier => Emulsifier,
        IngredientKind.Clay => Clay,
        IngredientKind.Powder or IngredientKind.Starch => Powder,
        IngredientKind.Preservative => Preservative,
        IngredientKind.EssentialOil => EssentialOil,
        _ => Other,
    };

    private static Axis Plain(string name, string unit, double step, double weight, Func<AxisInput, double?> value) => new(name, null, unit, step, weight, false, value);

    private static Axis Stored(string name, Property property, double step, double weight) =>
        Plain(name, PropertyDefinition.All[property].Unit, step, weight, i => i.Stored(property));

    private static Axis Ratio(string name, Property property, double factor, double weight) => Stored(name, property, factor, weight) with { Logarithmic = true };

    private static double? MeltingOf(AxisInput input) =>
        input.Stored(Property.MeltingRange) ?? input.Stored(Property.MeltingPoint) ?? input.Stored(Property.SlipMeltingPoint)
        ?? input.Stored(Property.DropPoint) ?? input.Stored(Property.ClearPoint) ?? input.Stored(Property.CongealingPoint);

    private static double? ViscosityOf(AxisInput input)
    {
        // A viscosity is that of the melt; below the melting range it does not describe what is felt.
        if (input.Material.MeltedFrom is { } melted && melted > SkinTemperature)
        {
            return null;
        }

        var place = ((List<double>)[.. FlowTemperatures.All]).IndexOf(SkinTemperature);
        return input.Material.Viscosity is { } viscosity && input.Material.Density is { } density
            ? viscosity.Kinematic[place].Value * density.At(SkinTemperature).Value
            : null;
    }
}
