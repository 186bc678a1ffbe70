using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>A fatty-acid profile in percent by mass of all fatty acids (or of all fatty alcohols, for that half of a wax ester).</summary>
public sealed record FattyAcidProfile
{
    /// <summary>What was analysed or which standard sets the ranges, in a few words.</summary>
    public required string Label { get; init; }

    /// <summary>A sample, or the ranges of a standard.</summary>
    public required ProfileKind Kind { get; init; }

    /// <summary>The acids, or the alcohols of a wax ester.</summary>
    public ProfilePart Of { get; init; }

    /// <summary>Marks the sample that computations use where several stand side by side.</summary>
    public bool Used { get; init; }

    /// <summary>The shares, in the order of the source.</summary>
    public required IReadOnlyList<FattyAcidShare> Shares { get; init; }
}

/// <summary>The share of one fatty acid.</summary>
public sealed record FattyAcidShare : Statement
{
    /// <summary>The symbol of the acid, such as <c>18:1n-9</c>; a key of the fatty-acid table.</summary>
    public required string Acid { get; init; }

    /// <summary>The lower end of a range [%].</summary>
    public decimal? Low { get; init; }

    /// <summary>The share in a sample [%].</summary>
    public decimal? Typical { get; init; }

    /// <summary>The upper end of a range [%].</summary>
    public decimal? High { get; init; }
}

/// <summary>The sorts of profile.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<ProfileKind>))]
public enum ProfileKind
{
    /// <summary>Typical shares that add up to about 100 %.</summary>
    Sample,

    /// <summary>Lower and upper limits of each acid, as a standard sets them.</summary>
    Range,
}

/// <summary>Which half of the ester a profile describes.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<ProfilePart>))]
public enum ProfilePart
{
    /// <summary>The acids.</summary>
    Acids,

    /// <summary>The alcohols of a wax ester.</summary>
    Alcohols,
}
