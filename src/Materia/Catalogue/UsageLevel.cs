namespace Materia.Catalogue;

/// <summary>The usual share of an ingredient in one type of product. It is advice, never a limit of law.</summary>
public sealed record UsageLevel : Statement
{
    /// <summary>The key of the <see cref="ProductUse"/>.</summary>
    public required string Use { get; init; }

    /// <summary>The least share that does something [%].</summary>
    public decimal? Low { get; init; }

    /// <summary>A good share to begin with [%].</summary>
    public decimal? Typical { get; init; }

    /// <summary>The greatest share that is usual [%].</summary>
    public decimal? High { get; init; }
}
