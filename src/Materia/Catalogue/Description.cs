namespace Materia.Catalogue;

/// <summary>What an ingredient is, what it does in a product, how it feels and how to work with it, in the catalogue's own words.</summary>
public sealed record Description : Statement
{
    /// <summary>Two to four sentences. Figures belong in the properties, not here.</summary>
    public required string Text { get; init; }
}
