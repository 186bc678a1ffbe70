namespace Materia.Catalogue;

/// <summary>
/// One part of a material that is sold as a mixture or a solution, water included. A label names the parts, and limits are counted on
/// them. Typical shares, where all are given, add up to about 100 %.
/// </summary>
public sealed record CompositePart : Statement
{
    /// <summary>The INCI name of the part, written as the catalogue writes INCI names.</summary>
    public required string InciName { get; init; }

    /// <summary>The id of the part in the catalogue, where it is an ingredient of its own.</summary>
    public string? Ingredient { get; init; }

    /// <summary>The CAS number of the part, where it is one substance.</summary>
    public string? Cas { get; init; }

    /// <summary>The lower end of its share [%].</summary>
    public decimal? Low { get; init; }

    /// <summary>Its usual share [%].</summary>
    public decimal? Typical { get; init; }

    /// <summary>The upper end of its share [%].</summary>
    public decimal? High { get; init; }
}
