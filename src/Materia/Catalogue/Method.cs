namespace Materia.Catalogue;

/// <summary>A way of working out a figure: its equation, where it comes from, where it holds and how far it can be trusted.</summary>
public sealed record Method
{
    /// <summary>The key that results name, in kebab case.</summary>
    public required string Id { get; init; }

    /// <summary>The name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>The equation with its symbols explained, units in brackets.</summary>
    public required string Equation { get; init; }

    /// <summary>Where the method holds and where it does not.</summary>
    public required string Validity { get; init; }

    /// <summary>The error to expect, and what it was measured against.</summary>
    public required string Error { get; init; }

    /// <summary>Keys of the sources of the method and its constants.</summary>
    public required IReadOnlyList<string> Sources { get; init; }
}
