using System.Collections.Frozen;

namespace Materia.Catalogue;

/// <summary>What a property is measured in, and between which values a figure is plausible. Outside them a typing error is likelier than the figure.</summary>
/// <param name="Property">The property.</param>
/// <param name="Title">The name shown to people.</param>
/// <param name="Unit">The UCUM code of its unit.</param>
/// <param name="PlausibleLow">The least plausible value, in the unit.</param>
/// <param name="PlausibleHigh">The greatest plausible value, in the unit.</param>
public sealed record PropertyDefinition(Property Property, string Title, string Unit, decimal PlausibleLow, decimal PlausibleHigh)
{
    /// <summary>All definitions by property.</summary>
    public static FrozenDictionary<Property, PropertyDefinition> All { get; } = Definitions().ToFrozenDictionary(d => d.Property);

    private static IEnumerable<PropertyDefinition> Definitions() =>
    [
        new(Property.MeltingRange, "Melting range", Units.Celsius, -80, 200),
        new(Property.MeltingPoint, "Melting point", Units.Celsius, -100, 3000),
        new(Property.SlipMeltingPoint, "Slip melting point", Units.Celsius, -20, 90),
        new(Property.ClearPoint, "Clear melting point", Units.Celsius, -20, 110),
        new(Property.DropPoint, "Drop point", Units.Celsius, 20, 130),
        new(Property.CongealingPoint, "Congealing temperature", Units.Celsius, -40, 120),
        new(Property.CloudPoint, "Cloud point", Units.Celsius, -40, 60),
        new(Property.Titre, "Titre of the fatty acids", Units.Celsius, -20, 80),
        new(Property.IodineValue, "Iodine value", Units.GramPerHundredGram, 0, 400),
        new(Property.SaponificationValue, "Saponification value", Units.MilligramPerGram, 0, 400),
        new(Property.AcidValue, "Acid value", Units.MilligramPerGram, 0, 300),
        new(Property.EsterValue, "Ester value", Units.MilligramPerGram, 0, 400),
        new(Property.HydroxylValue, "Hydroxyl value", Units.MilligramPerGram, 0, 400),
        new(Property.FreeFattyAcids, "Free fatty acids", Units.Percent, 0, 100),
        new(Property.UnsaponifiableMatter, "Unsaponifiable matter", Units.Percent, 0, 100),
        new(Property.Density, "Density", Units.GramPerMillilitre, 0.6m, 7),
        new(Property.RelativeDensity, "Relative density", Units.One, 0.6m, 7),
        new(Property.RefractiveIndex, "Refractive index", Units.One, 1.3m, 1.7m),
        new(Property.Viscosity, "Viscosity", Units.MillipascalSecond, 0.2m, 100_000),
        new(Property.SmokePoint, "Smoke point", Units.Celsius, 80, 300),
        new(Property.FlashPoint, "Flash point", Units.Celsius, 20, 400),
        new(Property.FirePoint, "Fire point", Units.Celsius, 30, 450),
        new(Property.OxidativeInductionTime, "Oxidative induction time", Units.Hour, 0, 1000),
        new(Property.TotalTocopherols, "Total tocopherols and tocotrienols", Units.MilligramPerKilogram, 0, 10_000),
        new(Property.AlphaTocopherol, "Alpha-tocopherol", Units.MilligramPerKilogram, 0, 5000),
        new(Property.GammaTocopherol, "Gamma-tocopherol", Units.MilligramPerKilogram, 0, 5000),
        new(Property.DeltaTocopherol, "Delta-tocopherol", Units.MilligramPerKilogram, 0, 5000),
        new(Property.Squalene, "Squalene", Units.MilligramPerKilogram, 0, 100_000),
        new(Property.BetaCarotene, "Beta-carotene", Units.MilligramPerKilogram, 0, 10_000),
        new(Property.GammaOryzanol, "Gamma-oryzanol", Units.Percent, 0, 5),
        new(Property.RequiredHlb, "Required HLB (oil in water)", Units.One, 1, 20),
        new(Property.Ph, "pH", Units.PhScale, 0, 14),
        new(Property.OilAbsorption, "Oil absorption", Units.GramPerHundredGram, 5, 400),
        new(Property.HighestProcessTemperature, "Highest process temperature", Units.Celsius, 20, 300),
        new(Property.UsageLevel, "Usage level", Units.Percent, 0, 100),
        new(Property.MiddlePositionSaturation, "Saturated fraction at sn-2 over saturated fraction overall", Units.One, 0, 3),
        new(Property.HeatOfFusion, "Heat of fusion", Units.JoulePerGram, 0, 400),
        new(Property.Hlb, "HLB", Units.One, 0, 45),
        new(Property.RequiredHlbWaterInOil, "Required HLB (water in oil)", Units.One, 1, 20),
        new(Property.MolarMass, "Molar mass", Units.GramPerMole, 10, 5_000_000),
        new(Property.WaterContent, "Water content", Units.Percent, 0, 100),
        new(Property.ActiveContent, "Active content", Units.Percent, 0, 100),
        new(Property.CationExchangeCapacity, "Cation-exchange capacity", Units.CentimolePerKilogram, 0, 400),
        new(Property.SwellingVolume, "Swelling volume of 2 g in water", Units.Millilitre, 0, 60),
        new(Property.WaterAbsorption, "Water absorption", Units.GramPerHundredGram, 5, 2000),
        new(Property.ShelfLife, "Shelf life unopened", Units.Month, 1, 120),
        new(Property.NaturalOriginIndex, "Natural origin index (ISO 16128)", Units.One, 0, 1),
        new(Property.WaterSolubility, "Solubility in water", Units.GramPerLitre, 0, 5000),
        new(Property.DissociationConstant, "pKa", Units.One, -3, 16),
        new(Property.PartitionCoefficient, "log P (octanol-water)", Units.One, -8, 15),
        new(Property.EffectivePh, "pH in which it works", Units.PhScale, 0, 14),
        new(Property.BoilingPoint, "Boiling point", Units.Celsius, 20, 500),
        new(Property.OpticalRotation, "Optical rotation", Units.Degree, -180, 180),
    ];
}
