namespace Materia.Chemistry;

/// <summary>One step of a computation: what was worked out, by which equation, from which figures.</summary>
public sealed record ExplainedStep
{
    /// <summary>What the step works out, in a few words.</summary>
    public required string What { get; init; }

    /// <summary>The equation, in symbols that <see cref="Arithmetic"/> fills with numbers.</summary>
    public required string Equation { get; init; }

    /// <summary>The equation with its numbers, and the result with its unit.</summary>
    public required string Arithmetic { get; init; }

    /// <summary>The stored figures that went in.</summary>
    public IReadOnlyList<UsedFigure> Inputs { get; init; } = [];
}

/// <summary>A stored figure that went into a computation.</summary>
/// <param name="Ingredient">The id of the ingredient, or its name when it is the maker's own; for a figure of a pure species, the species.</param>
/// <param name="What">What the figure is, such as <c>18:1n-9</c> or <c>density at 20 Cel</c>.</param>
/// <param name="Value">The value used.</param>
/// <param name="Unit">The UCUM code of its unit.</param>
/// <param name="Evidence">Its grade as a kebab-case word; <c>set-by-method</c> for a figure that a method sets.</param>
/// <param name="Source">The key of its source or method, or <c>own</c> when it came with the formula.</param>
/// <param name="Locator">Where in the source.</param>
public sealed record UsedFigure(string Ingredient, string What, double Value, string Unit, string Evidence, string Source, string? Locator);
