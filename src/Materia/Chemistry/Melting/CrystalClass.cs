using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>Classes of species that crystallise with their own kind; different classes form crystals of their own.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<CrystalClass>))]
public enum CrystalClass
{
    /// <summary>Three long saturated chains.</summary>
    Trisaturated,

    /// <summary>Saturated outside, unsaturated in the middle.</summary>
    SymmetricMonounsaturated,

    /// <summary>Two saturated chains with the unsaturated one outside.</summary>
    AsymmetricMonounsaturated,

    /// <summary>One saturated chain.</summary>
    Diunsaturated,

    /// <summary>No saturated chain.</summary>
    Triunsaturated,

    /// <summary>Saturated chains of fewer than 15 carbons on average, with at most one unsaturated chain.</summary>
    Lauric,

    /// <summary>Fatty alcohols.</summary>
    Alcohol,

    /// <summary>Free fatty acids; each forms its own crystals.</summary>
    FreeAcid,

    /// <summary>Wax esters.</summary>
    WaxEster,

    /// <summary>Alkanes of natural waxes.</summary>
    Alkane,

    /// <summary>The n-alkanes of paraffin wax, which crystallise as one solid solution.</summary>
    Paraffin,

    /// <summary>Free acids of natural waxes, C24 and longer.</summary>
    WaxAcid,

    /// <summary>Hydroxy esters and alcohols of carnauba wax.</summary>
    WaxHydroxyEster,

    /// <summary>Hydrogenated castor oil; its triacylglycerol crystallises alone.</summary>
    HydroxyFat,

    /// <summary>What does not crystallise in the range of temperatures looked at.</summary>
    Liquid,
}
