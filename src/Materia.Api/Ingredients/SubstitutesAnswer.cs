using Materia.Formulation.Neighbours;

namespace Materia.Api.Ingredients;

/// <summary>What can stand in for an ingredient, nearest first.</summary>
public sealed record SubstitutesAnswer
{
    /// <summary>The id of the ingredient asked for.</summary>
    public required string Id { get; init; }

    /// <summary>Its common name.</summary>
    public required string Name { get; init; }

    /// <summary>How many ingredients come into question under the filters.</summary>
    public required int Total { get; init; }

    /// <summary>The nearest of them.</summary>
    public required IReadOnlyList<Neighbour> Items { get; init; }

    /// <summary>The key of the method by which they are ranked.</summary>
    public required string Method { get; init; }

    /// <summary>What a list of neighbours does not say.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }
}
