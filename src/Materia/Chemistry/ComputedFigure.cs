namespace Materia.Chemistry;

/// <summary>
/// A result computed from the catalogue: a value with the range it may lie in, how it was worked out, and how much of the
/// formula it rests on. A result that cannot be given has no value and says why in <see cref="Absent"/>.
/// </summary>
public sealed record ComputedFigure
{
    /// <summary>The result, in <see cref="Unit"/>; <see langword="null"/> when it is absent.</summary>
    public double? Value { get; init; }

    /// <summary>The lower end of the range that the ingredients' ranges and the model's error allow.</summary>
    public double? Low { get; init; }

    /// <summary>The upper end of that range.</summary>
    public double? High { get; init; }

    /// <summary>The UCUM code of the unit.</summary>
    public required string Unit { get; init; }

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public required string Method { get; init; }

    /// <summary>The share of the mass concerned whose data the result rests on, 0 to 1.</summary>
    public required double Coverage { get; init; }

    /// <summary>What limits the result.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no value.</summary>
    public string? Absent { get; init; }

    /// <summary>How the result came about, step by step; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }
}
