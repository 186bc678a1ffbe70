using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>The properties that the catalogue can hold; unit and plausible band of each stand in <see cref="PropertyDefinition"/>.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Property>))]
public enum Property
{
    /// <summary>Temperatures between which it melts.</summary>
    MeltingRange,

    /// <summary>Melting point of a substance that has one.</summary>
    MeltingPoint,

    /// <summary>Slip melting point in an open capillary.</summary>
    SlipMeltingPoint,

    /// <summary>Temperature at which the last crystal goes.</summary>
    ClearPoint,

    /// <summary>Drop point of a wax.</summary>
    DropPoint,

    /// <summary>Congealing temperature on cooling.</summary>
    CongealingPoint,

    /// <summary>Temperature at which an oil turns cloudy on cooling.</summary>
    CloudPoint,

    /// <summary>Solidification point of the separated fatty acids.</summary>
    Titre,

    /// <summary>Iodine value, g of iodine per 100 g.</summary>
    IodineValue,

    /// <summary>Saponification value, mg of KOH per g.</summary>
    SaponificationValue,

    /// <summary>Acid value, mg of KOH per g.</summary>
    AcidValue,

    /// <summary>Ester value, mg of KOH per g.</summary>
    EsterValue,

    /// <summary>Hydroxyl value, mg of KOH per g.</summary>
    HydroxylValue,

    /// <summary>Free fatty acids.</summary>
    FreeFattyAcids,

    /// <summary>Unsaponifiable matter.</summary>
    UnsaponifiableMatter,

    /// <summary>Density.</summary>
    Density,

    /// <summary>Relative density against water.</summary>
    RelativeDensity,

    /// <summary>Refractive index at the sodium D line.</summary>
    RefractiveIndex,

    /// <summary>Dynamic viscosity.</summary>
    Viscosity,

    /// <summary>Smoke point.</summary>
    SmokePoint,

    /// <summary>Flash point.</summary>
    FlashPoint,

    /// <summary>Fire point.</summary>
    FirePoint,

    /// <summary>Induction time of an accelerated oxidation test at the temperature stated.</summary>
    OxidativeInductionTime,

    /// <summary>Tocopherols and tocotrienols together.</summary>
    TotalTocopherols,

    /// <summary>Alpha-tocopherol.</summary>
    AlphaTocopherol,

    /// <summary>Gamma-tocopherol.</summary>
    GammaTocopherol,

    /// <summary>Delta-tocopherol.</summary>
    DeltaTocopherol,

    /// <summary>Squalene.</summary>
    Squalene,

    /// <summary>Beta-carotene.</summary>
    BetaCarotene,

    /// <summary>Gamma-oryzanol.</summary>
    GammaOryzanol,

    /// <summary>HLB that an oil phase requires for an oil-in-water emulsion.</summary>
    RequiredHlb,

    /// <summary>pH of the dispersion or solution that the note describes.</summary>
    Ph,

    /// <summary>Oil absorption of a powder, g of oil per 100 g.</summary>
    OilAbsorption,

    /// <summary>Highest temperature that the ingredient should see while working.</summary>
    HighestProcessTemperature,

    /// <summary>Usual share of a formula.</summary>
    UsageLevel,

    /// <summary>Saturated fraction of the acids at the middle position of the glycerol, sn-2, over the saturated fraction of all acids, by moles: 1 when saturated acids sit anywhere, near 0 when they avoid the middle.</summary>
    MiddlePositionSaturation,

    /// <summary>Heat taken up on melting.</summary>
    HeatOfFusion,

    /// <summary>Hydrophile-lipophile balance of an emulsifier.</summary>
    Hlb,

    /// <summary>HLB that an oil phase requires for a water-in-oil emulsion.</summary>
    RequiredHlbWaterInOil,

    /// <summary>Molar mass.</summary>
    MolarMass,

    /// <summary>Water in the material as sold.</summary>
    WaterContent,

    /// <summary>Active matter in the material as sold.</summary>
    ActiveContent,

    /// <summary>Cation-exchange capacity, cmol of charge per kg.</summary>
    CationExchangeCapacity,

    /// <summary>Volume that 2 g take up after swelling in water.</summary>
    SwellingVolume,

    /// <summary>Water taken up by a powder, g per 100 g.</summary>
    WaterAbsorption,

    /// <summary>How long it keeps unopened, stored as the note on storage says.</summary>
    ShelfLife,

    /// <summary>Natural origin index of ISO 16128: mass fraction of natural origin, with the water.</summary>
    NaturalOriginIndex,

    /// <summary>Mass that dissolves in a litre of water.</summary>
    WaterSolubility,

    /// <summary>Negative decimal logarithm of the acid dissociation constant.</summary>
    DissociationConstant,

    /// <summary>Decimal logarithm of the octanol-water partition coefficient.</summary>
    PartitionCoefficient,

    /// <summary>pH between which it works or keeps.</summary>
    EffectivePh,

    /// <summary>Boiling point at atmospheric pressure.</summary>
    BoilingPoint,

    /// <summary>Optical rotation at the sodium D line in a 100 mm tube.</summary>
    OpticalRotation,
}
