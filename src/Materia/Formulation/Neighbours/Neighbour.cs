using Materia.Catalogue;

namespace Materia.Formulation.Neighbours;

/// <summary>An ingredient that can stand in for another.</summary>
public sealed record Neighbour
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its common name.</summary>
    public required string Name { get; init; }

    /// <summary>Its kind.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>What it shares with the one asked for, in sentences.</summary>
    public required IReadOnlyList<string> Why { get; init; }

    /// <summary>How far the properties lie apart, in steps that a maker notices: the root of the weighted mean of squares; a figure that either lacks counts 3 steps [1].</summary>
    public required double Distance { get; init; }

    /// <summary>How far apart what the two are for lies, in the same steps [1]; neighbours are ranked by the sum of both.</summary>
    public required double PurposeGap { get; init; }

    /// <summary>The weighted share of the properties for which both have a figure, 0 to 1.</summary>
    public required double Coverage { get; init; }

    /// <summary>What both have a figure for, the greatest difference first.</summary>
    public required IReadOnlyList<PropertyDifference> Differences { get; init; }

    /// <summary>The properties that could not be compared because one of the two has no figure.</summary>
    public required IReadOnlyList<string> NotCompared { get; init; }

    /// <summary>How much of it takes the place of one part of the one asked for; absent where nothing says.</summary>
    public SwapRatio? SwapRatio { get; init; }

    /// <summary>What to know before taking it.</summary>
    public required IReadOnlyList<NeighbourWarning> Warnings { get; init; }
}

/// <summary>How two ingredients differ in one property.</summary>
public sealed record PropertyDifference
{
    /// <summary>The property, such as <c>solid-content</c>.</summary>
    public required string Property { get; init; }

    /// <summary>The temperature it is taken at [Cel].</summary>
    public double? Temperature { get; init; }

    /// <summary>The value of the ingredient asked for, in the unit; absent where the property is a word or a composition.</summary>
    public double? Asked { get; init; }

    /// <summary>The value of the candidate.</summary>
    public double? Candidate { get; init; }

    /// <summary>The UCUM code of the unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Candidate less asked; for constituents the share of the oil that differs [%].</summary>
    public double? Difference { get; init; }

    /// <summary>The difference in steps that a maker notices [1].</summary>
    public required double Steps { get; init; }

    /// <summary>The difference in words, where it is none of numbers.</summary>
    public string? Words { get; init; }
}

/// <summary>How much of one ingredient takes the place of one part of another.</summary>
/// <param name="Value">Parts by mass for one part [1].</param>
/// <param name="Basis">What it follows from: <c>substitution-group</c> or <c>active-content</c>.</param>
/// <param name="Group">The key of the group.</param>
/// <param name="Text">What changes, as the group's membership says.</param>
/// <param name="Evidence">The weaker grade of the two statements.</param>
public sealed record SwapRatio(decimal Value, string Basis, string? Group, string? Text, Evidence Evidence);

/// <summary>What to know before taking a neighbour.</summary>
/// <param name="Kind">The sort: allergen-family, botanical-family, comedogenic, limit, phototoxic, usage-level or caution.</param>
/// <param name="Text">The sentence.</param>
/// <param name="Source">The key of the source, where it rests on one.</param>
public sealed record NeighbourWarning(NeighbourWarningKind Kind, string Text, string? Source = null);
