using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Chemistry.Emulsions;

/// <summary>What HLB says of an emulsion: the type to expect and a ratio of emulsifiers to begin with, never dose or stability.</summary>
public sealed record Emulsion
{
    /// <summary>The key of the method.</summary>
    public const string MethodKey = "required-hlb";

    /// <summary>The HLB that the oil phase requires to be dispersed in water [1].</summary>
    public required ComputedFigure RequiredOilInWater { get; init; }

    /// <summary>The HLB that the oil phase requires to surround the water [1].</summary>
    public required ComputedFigure RequiredWaterInOil { get; init; }

    /// <summary>The HLB that the emulsifiers offer together [1].</summary>
    public required ComputedFigure Offered { get; init; }

    /// <summary>The type that the offered HLB points to; absent where nothing is offered.</summary>
    public EmulsionType? Type { get; init; }

    /// <summary>Offered less required, for that type [1]; absent where either is.</summary>
    public double? Gap { get; init; }

    /// <summary>What the gap means, in a sentence.</summary>
    public string? Reading { get; init; }

    /// <summary>Pairs that would meet the need, those that are in the formula already first.</summary>
    public IReadOnlyList<EmulsifierPair> Pairs { get; init; } = [];

    /// <summary>The emulsifiers in the formula.</summary>
    public IReadOnlyList<EmulsifierPresent> Emulsifiers { get; init; } = [];

    /// <summary>The volumes of the phases.</summary>
    public PhaseVolumes? Phases { get; init; }

    /// <summary>Materials of opposite charge.</summary>
    public IReadOnlyList<string> ChargeConflicts { get; init; } = [];

    /// <summary>Where HLB does not describe what is in the formula.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>Why there is nothing to say of an emulsion.</summary>
    public string? Absent { get; init; }
}

/// <summary>Types of emulsion.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<EmulsionType>))]
public enum EmulsionType
{
    /// <summary>Oil in water.</summary>
    OilInWater,

    /// <summary>Water in oil.</summary>
    WaterInOil,
}

/// <summary>An emulsifier in the formula.</summary>
/// <param name="Ingredient">The component that brings it.</param>
/// <param name="Name">What it is.</param>
/// <param name="Percent">Its share of the formula [%].</param>
/// <param name="Hlb">Its HLB [1]; absent where none is held.</param>
/// <param name="Counted">Whether it counts towards the offered HLB.</param>
public sealed record EmulsifierPresent(string Ingredient, string Name, decimal Percent, double? Hlb, bool Counted);

/// <summary>Two emulsifiers in the ratio that offers what the oil phase requires.</summary>
/// <param name="High">The id or name of the one with the higher HLB.</param>
/// <param name="HighHlb">Its HLB [1].</param>
/// <param name="Low">The id or name of the one with the lower HLB.</param>
/// <param name="LowHlb">Its HLB [1].</param>
/// <param name="HighPercent">The share of the higher one in the pair [%].</param>
/// <param name="LowPercent">The share of the lower one in the pair [%].</param>
/// <param name="Present">How many of the two are in the formula already.</param>
public sealed record EmulsifierPair(string High, double HighHlb, string Low, double LowHlb, double HighPercent, double LowPercent, int Present);

/// <summary>The phases by volume, by stored densities where there are any, else 0.92 for oil and 1 for the water phase.</summary>
/// <param name="OilPercent">Oil phase [% of both].</param>
/// <param name="WaterPercent">Water phase [% of both].</param>
/// <param name="Note">What the share of the dispersed phase means.</param>
public sealed record PhaseVolumes(double OilPercent, double WaterPercent, string Note);
