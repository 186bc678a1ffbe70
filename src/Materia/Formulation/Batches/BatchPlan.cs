using Materia.Chemistry;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Batches;

/// <summary>What to weigh in for a batch, in whole steps of the scale, so that the weights add up exactly.</summary>
public sealed record BatchPlan
{
    /// <summary>The section <c>batch</c>.</summary>
    public static EvaluationSection<BatchPlan> Section { get; } =
        new("batch", "What to weigh in, rounded to the scale so that the sum is exact, and the jars it fills.", BatchPlanner.Plan);

    /// <summary>The mass weighed in, the sum of all lines.</summary>
    public Mass? Total { get; init; }

    /// <summary>The smallest step of the scale.</summary>
    public Mass? ScaleResolution { get; init; }

    /// <summary>The weights, in the order of the formula.</summary>
    public IReadOnlyList<BatchLine> Lines { get; init; } = [];

    /// <summary>What stays behind in beakers [%] of the mass weighed in.</summary>
    public decimal? LossPercent { get; init; }

    /// <summary>What is left to fill after the loss.</summary>
    public Mass? ExpectedYield { get; init; }

    /// <summary>What would have to be weighed in so that the batch's mass is left after the loss; absent when there is no loss or the batch is sized by jars.</summary>
    public Mass? MassForFullYield { get; init; }

    /// <summary>The jars, where a jar's volume is given and the density is known.</summary>
    public JarFilling? Jars { get; init; }

    /// <summary>What limits the plan.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no plan.</summary>
    public string? Absent { get; init; }

    /// <summary>How the weights came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }
}

/// <summary>One line of a batch.</summary>
public sealed record BatchLine : MaterialName
{
    /// <summary>What to weigh.</summary>
    public required Mass Mass { get; init; }

    /// <summary>The share that this weight has of the batch [%], to four places.</summary>
    public required decimal PercentAchieved { get; init; }
}

/// <summary>A mass.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
public sealed record Mass(decimal Value, string Unit);
