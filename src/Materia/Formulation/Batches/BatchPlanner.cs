using Materia.Chemistry;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Batches;

/// <summary>Plans a batch: its size, the weights, the loss and the jars.</summary>
internal static class BatchPlanner
{
    /// <summary>Under so many steps of the scale a weight can be off by more than 5 % from rounding alone.</summary>
    private const int FewSteps = 10;

    private const decimal GreatestSteps = 1e15m;

    public static BatchPlan Plan(EvaluationInput input)
    {
        if (input.Formula.Batch is not { } batch)
        {
            return new BatchPlan { Absent = "The formula has no \"batch\". Add one, such as { \"mass\": 250, \"unit\": \"g\", \"scaleResolution\": 0.1 }, to get weights." };
        }

        var density = batch.JarVolume is null ? null : input.Of(FormulaDensity.Section).Filled();
        var asked = batch.Mass ?? MassForJars(batch, density);
        if (asked is not { } mass)
        {
            return new BatchPlan { Absent = "The batch is sized by jars, which takes a density, and this formula has none (see the section density). Give the batch a mass." };
        }

        // A mass worked out from jars is rounded up, so that it does fill them.
        var ideal = mass / batch.ScaleResolution;
        if (ideal > GreatestSteps)
        {
            return new BatchPlan { Absent = "So many jars take more than can be weighed with this scale. Give fewer jars or a coarser scale." };
        }

        var steps = (long)(batch.Mass is null ? decimal.Ceiling(ideal) : decimal.Round(ideal, MidpointRounding.AwayFromZero));
        var parts = LargestRemainder.Apportion([.. input.Formula.Lines.Select(l => l.Percent)], steps);
        var total = steps * batch.ScaleResolution;
        var yield = RoundDown(total * (1 - (batch.LossPercent / 100)), batch.ScaleResolution);
        var jars = batch.JarVolume is { } volume && density is not null
            ? JarFilling.Of(volume, batch.HeadspacePercent, batch.Jars, yield * batch.Unit.Grams, density)
            : null;
        var unit = batch.Unit.Ucum;
        return new BatchPlan
        {
            Total = new Mass(total, unit),
            ScaleResolution = new Mass(batch.ScaleResolution, unit),
            Lines = [.. input.Formula.Lines.Zip(parts, (line, part) => Line(line, part, steps, batch))],
            LossPercent = batch.LossPercent,
            ExpectedYield = new Mass(yield, unit),
            MassForFullYield = batch.LossPercent > 0 && batch.Mass is not null
                ? new Mass(-RoundDown(-total / (1 - (batch.LossPercent / 100)), batch.ScaleResolution), unit)
                : null,
            Jars = jars,
            Warnings = BatchWarnings.Of(input.Formula, parts, steps, FewSteps, jars),
            Steps = input.Explain ? BatchSteps.Of(input.Formula, parts, steps) : null,
        };
    }

    /// <summary>The mass that fills the jars after the loss, in the batch's unit; <see langword="null"/> without a density.</summary>
    private static decimal? MassForJars(NormalisedBatch batch, TemperatureFigure? density)
    {
        if (density is null || batch is not { Jars: { } jars, JarVolume: { } volume })
        {
            return null;
        }

        var filled = jars * volume * (1 - (batch.HeadspacePercent / 100));
        return filled * (decimal)density.Value / (1 - (batch.LossPercent / 100)) / batch.Unit.Grams;
    }

    private static BatchLine Line(NormalisedLine line, long part, long steps, NormalisedBatch batch) => new()
    {
        Ingredient = line.IsOwn ? null : line.Material,
        Own = line.IsOwn ? line.Material : null,
        Mass = new Mass(part * batch.ScaleResolution, batch.Unit.Ucum),
        PercentAchieved = decimal.Round(100m * part / steps, 4),
    };

    private static decimal RoundDown(decimal mass, decimal step) => decimal.Floor(mass / step) * step;
}
