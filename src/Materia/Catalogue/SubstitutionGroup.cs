namespace Materia.Catalogue;

/// <summary>Ingredients that can stand in for each other in one job.</summary>
public sealed record SubstitutionGroup : Statement
{
    /// <summary>The key, such as <c>clay-mask</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>The job that its members share, and what to watch when one takes another's place.</summary>
    public required string Description { get; init; }
}
