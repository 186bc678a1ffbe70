namespace Materia.Catalogue;

/// <summary>Something about the ingredient that may hurt, spoil or stain.</summary>
public sealed record Caution : Statement
{
    /// <summary>The caution, as one sentence that says what to do.</summary>
    public required string Text { get; init; }
}
