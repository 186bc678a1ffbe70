using Materia.Formulation.Costs;

namespace Materia.Formulation;

/// <summary>
/// A formula as it was submitted. Nothing is checked yet, so every member may be absent; <see cref="NormalisedFormula.Create"/>
/// checks it and names each fault.
/// </summary>
public sealed record Formula
{
    /// <summary>The title, at most 200 characters.</summary>
    public string? Title { get; init; }

    /// <summary>What the product is for: a key of the table of uses, such as <c>hair-mask-rinse-off</c>.</summary>
    public string? Use { get; init; }

    /// <summary>The market whose rules concern the maker.</summary>
    public Market? Market { get; init; }

    /// <summary>The lines, 1 to 200. Percentages add up to 100, or one line is the balance, or every line has a mass.</summary>
    public IReadOnlyList<FormulaLine> Lines { get; init; } = [];

    /// <summary>How much to make.</summary>
    public FormulaBatch? Batch { get; init; }

    /// <summary>What the materials cost, at most 200 prices, all in one currency.</summary>
    public IReadOnlyList<FormulaPrice> Prices { get; init; } = [];

    /// <summary>What goes with each jar and what it costs: jar, lid, label.</summary>
    public IReadOnlyList<FormulaPackaging> Packaging { get; init; } = [];

    /// <summary>How far it is whipped.</summary>
    public Whip? Whip { get; init; }

    /// <summary>The pH of the finished product, measured; it decides how well acids preserve.</summary>
    public MeasuredPh? Ph { get; init; }
}

/// <summary>A measured pH: one value, or the range that the product is held in.</summary>
public sealed record MeasuredPh
{
    /// <summary>The value, 0 to 14; it counts as ±0.2, the error of a test strip.</summary>
    public decimal? Value { get; init; }

    /// <summary>The lower end of the range; stands with <see cref="High"/> in place of a value.</summary>
    public decimal? Low { get; init; }

    /// <summary>The upper end of the range.</summary>
    public decimal? High { get; init; }
}

/// <summary>How far a product is whipped.</summary>
public sealed record Whip
{
    /// <summary>
    /// The gain in volume by air, 0 to 300 [%]: 100 × (density before / density after − 1). Measure it with one cup, weighed full
    /// before and after whipping.
    /// </summary>
    public decimal? OverrunPercent { get; init; }
}
