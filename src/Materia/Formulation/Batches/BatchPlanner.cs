using Materia.Formulation.Sections;

namespace Materia.Formulation.Batches;

/// <summary>Plans a batch: its size, the weights, the loss and the jars.</summary>
internal static class BatchPlanner
{
    /// <summary>Under so many steps of the scale a weight can be off by more than 5 % from rounding alone.</summary>
    public const int FewSteps = 10;

    /// <summary>More steps than this no scale has.</summary>
    public const decimal GreatestSteps = 1e15m;

    public static BatchPlan Plan(EvaluationInput input)
    {
        if (input.Formula.Batch is not { } batch)
        {
            return new BatchPlan { Absent = "The formula has no \"batch\". Add one, such as { \"mass\": 250, \"unit\": \"g\", \"scaleResolution\": 0.1 }, to get weights." };
        }

        var density = batch.JarVolume is null && batch.Volume is null ? null : input.Of(FormulaDensity.Section).Filled();
        if (BatchBasis.Of(batch, density) is not ({ } basis, var asked))
        {
            var by = batch.Volume is null ? "jars" : "volume";
            return new BatchPlan { Absent = $"The batch is sized by {by}, which takes a density, and this formula has none (see the section density). Give the batch a mass." };
        }

        // A mass worked out from jars or a volume is rounded up, so that it does fill them.
        var ideal = asked / batch.ScaleResolution;
        if (ideal > GreatestSteps)
        {
            return new BatchPlan { Absent = "That is more than can be weighed with this scale. Make less, or give a coarser scale." };
        }

        var steps = (long)(batch.Mass is null ? decimal.Ceiling(ideal) : decimal.Round(ideal, MidpointRounding.AwayFromZero));
        var parts = LargestRemainder.Apportion([.. input.Formula.Lines.Select(l => l.Percent)], steps);
        return Describe(input, batch, basis, steps, parts, JarFilling.Of(batch, steps * batch.ScaleResolution * (1 - (batch.LossPercent / 100)) * batch.Unit.Grams, density));
    }

    private static BatchPlan Describe(EvaluationInput input, NormalisedBatch batch, BatchBasis basis, long steps, IReadOnlyList<long> parts, JarFilling? jars)
    {
        var unit = batch.Unit.Ucum;
        var total = steps * batch.ScaleResolution;
        var kept = 1 - (batch.LossPercent / 100);
        var rounding = BatchRounding.Of(input, parts, steps);
        IReadOnlyList<BatchRemedy> remedies = [.. input.Formula.Lines.Select((_, i) => BatchRemedy.Of(input.Formula, parts, steps, i)).OfType<BatchRemedy>()];
        return new BatchPlan
        {
            Basis = basis,
            Total = new Mass(total, unit),
            TotalInGrams = new Mass(total * batch.Unit.Grams, MassUnit.Gram.Ucum),
            ScaleResolution = new Mass(batch.ScaleResolution, unit),
            Lines = [.. input.Formula.Lines.Zip(parts, (line, part) => Line(line, part, steps, batch, input))],
            Rounding = rounding,
            Remedies = remedies,
            LossPercent = batch.LossPercent,
            ExpectedYield = new Mass(RoundDown(total * kept, batch.ScaleResolution), unit),
            MassForFullYield = batch.LossPercent > 0 && (batch.Mass ?? batch.Volume) is not null
                ? new Mass(-RoundDown(-total / kept, batch.ScaleResolution), unit)
                : null,
            Jars = jars,
            Notes = batch.Assumed,
            Warnings = BatchWarnings.Of(batch, steps, remedies, rounding, jars),
            Steps = input.Explain ? BatchSteps.Of(input.Formula, basis, parts, steps) : null,
        };
    }

    private static BatchLine Line(NormalisedLine line, long part, long steps, NormalisedBatch batch, EvaluationInput input)
    {
        var shift = BatchRounding.Achieved(part, steps) - line.Percent;
        return new()
        {
            Ingredient = line.IsOwn ? null : line.Material,
            Own = line.IsOwn ? line.Material : null,
            Mass = new Mass(part * batch.ScaleResolution, batch.Unit.Ucum),
            Percent = line.Percent,
            PercentAchieved = decimal.Round(100m * part / steps, 4),
            Shift = decimal.Round(shift, 4),
            ShiftPercent = decimal.Round(100 * shift / line.Percent, 2),
            Volume = MeasuredVolume.Of(line, part * batch.ScaleResolution * batch.Unit.Grams, input.Release),
        };
    }

    private static decimal RoundDown(decimal mass, decimal step) => decimal.Floor(mass / step) * step;
}
