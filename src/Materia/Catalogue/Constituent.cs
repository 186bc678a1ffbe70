namespace Materia.Catalogue;

/// <summary>A named constituent or class of constituents, in percent by mass.</summary>
public sealed record Constituent : Statement
{
    /// <summary>The substance or the class of substances, in lower case.</summary>
    public required string Substance { get; init; }

    /// <summary>The CAS number of the substance, where it is one substance.</summary>
    public string? Cas { get; init; }

    /// <summary>The lower end of the range [%].</summary>
    public decimal? Low { get; init; }

    /// <summary>The usual share [%].</summary>
    public decimal? Typical { get; init; }

    /// <summary>The upper end of the range [%].</summary>
    public decimal? High { get; init; }

    /// <summary>Marks the statement that computations use where several of the same substance stand side by side.</summary>
    public bool Used { get; init; }
}
