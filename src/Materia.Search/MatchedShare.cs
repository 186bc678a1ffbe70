using Materia.Catalogue;

namespace Materia.Search;

/// <summary>A share of a fatty acid that satisfied a range.</summary>
public sealed record MatchedShare
{
    /// <summary>The symbol asked for.</summary>
    public required string Asked { get; init; }

    /// <summary>The symbol whose share it is: the one asked for, or the undifferentiated one where the profile doesn't tell isomers apart.</summary>
    public required string Acid { get; init; }

    /// <summary>
    /// True when the share is that of all isomers together. Asked for one isomer, it is then only an upper bound of that isomer's share.
    /// </summary>
    public required bool Total { get; init; }

    /// <summary>The lower end [%].</summary>
    public required decimal Low { get; init; }

    /// <summary>The upper end [%].</summary>
    public required decimal High { get; init; }

    /// <summary>The UCUM code of the unit: percent of all fatty acids by mass.</summary>
    public string Unit { get; init; } = Units.Percent;
}
