using Materia.Chemistry;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Batches;

/// <summary>What to weigh in for a batch, in whole steps of the scale, so that the weights add up exactly.</summary>
public sealed record BatchPlan
{
    /// <summary>The key of the method.</summary>
    public const string MethodKey = "batch-weights";

    /// <summary>The section <c>batch</c>.</summary>
    public static EvaluationSection<BatchPlan> Section { get; } =
        new("batch", "What to weigh in, rounded to the scale so that the sum is exact, what rounding does to the percentages and the limits, and the jars it fills.", BatchPlanner.Plan);

    /// <summary>What the size of the batch was worked out from.</summary>
    public BatchBasis? Basis { get; init; }

    /// <summary>The mass weighed in, the sum of all lines.</summary>
    public Mass? Total { get; init; }

    /// <summary>The same in grams, exactly; an avoirdupois ounce is 28.349523125 g.</summary>
    public Mass? TotalInGrams { get; init; }

    /// <summary>The smallest step of the scale.</summary>
    public Mass? ScaleResolution { get; init; }

    /// <summary>The weights, in the order of the formula.</summary>
    public IReadOnlyList<BatchLine> Lines { get; init; } = [];

    /// <summary>What rounding to the scale did; absent when there is no plan.</summary>
    public BatchRounding? Rounding { get; init; }

    /// <summary>For each line under ten steps of the scale: what would mend it.</summary>
    public IReadOnlyList<BatchRemedy> Remedies { get; init; } = [];

    /// <summary>What stays behind in beakers [%] of the mass weighed in.</summary>
    public decimal? LossPercent { get; init; }

    /// <summary>What is left to fill after the loss, rounded down to the scale.</summary>
    public Mass? ExpectedYield { get; init; }

    /// <summary>What would have to be weighed in so that the batch's mass is left after the loss; absent when there is no loss or the batch is sized by jars.</summary>
    public Mass? MassForFullYield { get; init; }

    /// <summary>The jars, where a jar's mass is given, or its volume and the density is known.</summary>
    public JarFilling? Jars { get; init; }

    /// <summary>What was left out and filled in.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What limits the plan.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no plan.</summary>
    public string? Absent { get; init; }

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public string Method { get; init; } = MethodKey;

    /// <summary>How the weights came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }
}

/// <summary>One line of a batch.</summary>
public sealed record BatchLine : MaterialName
{
    /// <summary>What to weigh.</summary>
    public required Mass Mass { get; init; }

    /// <summary>The share that the formula asks for [%].</summary>
    public required decimal Percent { get; init; }

    /// <summary>The share that this weight has of the batch [%], to four places.</summary>
    public required decimal PercentAchieved { get; init; }

    /// <summary>What rounding did: achieved less asked [percentage points], to four places.</summary>
    public required decimal Shift { get; init; }

    /// <summary>The same in percent of the share asked for [%], to two places.</summary>
    public required decimal ShiftPercent { get; init; }

    /// <summary>The volume of this weight; only of a liquid whose density is known.</summary>
    public ApproximateVolume? Volume { get; init; }
}

/// <summary>A mass.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
public sealed record Mass(decimal Value, string Unit);

/// <summary>A volume worked out from a mass; a scale is the better measure.</summary>
/// <param name="Value">The volume at 20 °C.</param>
/// <param name="Low">The least that the range of the density allows.</param>
/// <param name="High">The most that it allows.</param>
/// <param name="Unit">The UCUM code of the unit, <c>mL</c>.</param>
/// <param name="Approximate">Always true.</param>
public sealed record ApproximateVolume(double Value, double Low, double High, string Unit, bool Approximate = true);
