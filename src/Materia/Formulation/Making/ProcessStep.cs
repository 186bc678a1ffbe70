using Materia.Catalogue;
using Materia.Formulation.Batches;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Making;

/// <summary>One step of making.</summary>
public sealed record ProcessStep
{
    /// <summary>Its number, from 1.</summary>
    public int Number { get; init; }

    /// <summary>What it belongs to.</summary>
    public required MakingStage Phase { get; init; }

    /// <summary>What to do, as sentences.</summary>
    public required string Action { get; init; }

    /// <summary>What goes in at this step; each line of the formula goes in at exactly one.</summary>
    public IReadOnlyList<ProcessIngredient> Ingredients { get; init; } = [];

    /// <summary>The temperature of the batch [Cel].</summary>
    public PlanFigure? Temperature { get; init; }

    /// <summary>How long it takes [min].</summary>
    public PlanFigure? Duration { get; init; }

    /// <summary>What to look for.</summary>
    public required string WatchFor { get; init; }

    /// <summary>What may hurt or spoil at this step.</summary>
    public IReadOnlyList<StepCaution> Cautions { get; init; } = [];

    /// <summary>How what the step advises was seen.</summary>
    public Evidence Evidence { get; init; } = Evidence.CommonPractice;

    /// <summary>The key of the source of the advice.</summary>
    public string Source { get; init; } = "trade-practice";
}

/// <summary>A line of the formula as it goes in.</summary>
public sealed record ProcessIngredient : MaterialName
{
    /// <summary>Its place in the formula, from 0, as in <c>/lines/0</c>.</summary>
    public required int Line { get; init; }

    /// <summary>What the maker calls it, or its common name.</summary>
    public required string Name { get; init; }

    /// <summary>Its share of the formula [%].</summary>
    public required decimal Percent { get; init; }

    /// <summary>What to weigh, where the formula has a batch.</summary>
    public Mass? Mass { get; init; }

    /// <summary>The phase that it is worked in.</summary>
    public required ProcessPhase Phase { get; init; }

    /// <summary>Why it goes in here, in a sentence.</summary>
    public required string Because { get; init; }

    /// <summary>How that was seen; absent where the maker decided it.</summary>
    public Evidence? Evidence { get; init; }

    /// <summary>The key of the source of that; <c>own</c> where the maker decided it.</summary>
    public required string Source { get; init; }

    /// <summary>What the catalogue says of the phase it goes into or how to disperse it.</summary>
    public IReadOnlyList<StepCaution> Notes { get; init; } = [];

    /// <summary>Below this temperature it keeps best [Cel], for a cool-down addition.</summary>
    public double? BestBelow { get; init; }

    /// <summary>It goes in no hotter than this [Cel], for a cool-down addition.</summary>
    public double? NotAbove { get; init; }
}

/// <summary>A figure of the plan, with the range it may lie in.</summary>
/// <param name="Value">The value.</param>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
public sealed record PlanFigure(double Value, double Low, double High, string Unit);

/// <summary>A sentence with its source.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Evidence">How it was seen.</param>
/// <param name="Source">The key of the source.</param>
/// <param name="Locator">Where in it.</param>
/// <param name="CheckIn">For a recalled sentence: the key of the work in which it should be looked up.</param>
public sealed record StepCaution(string Text, Evidence Evidence, string Source, string? Locator = null, string? CheckIn = null);
