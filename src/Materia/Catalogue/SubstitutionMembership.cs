namespace Materia.Catalogue;

/// <summary>That an ingredient can do the job of a <see cref="SubstitutionGroup"/>, and what changes when it does.</summary>
public sealed record SubstitutionMembership : Statement
{
    /// <summary>The key of the group.</summary>
    public required string Group { get; init; }

    /// <summary>True for the member that the others are compared with; one in each group.</summary>
    public bool Reference { get; init; }

    /// <summary>Mass of this ingredient in place of one part of the group's reference [1]; absent where none is known.</summary>
    public decimal? SwapRatio { get; init; }

    /// <summary>What changes when this ingredient takes the reference's place; for the reference, what it brings.</summary>
    public required string Text { get; init; }
}
