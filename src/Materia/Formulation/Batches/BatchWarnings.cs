namespace Materia.Formulation.Batches;

/// <summary>What a maker should know before weighing.</summary>
internal static class BatchWarnings
{
    public static IReadOnlyList<string> Of(NormalisedFormula formula, IReadOnlyList<long> parts, long steps, int fewSteps, JarFilling? jars)
    {
        var batch = formula.Batch!;
        var step = $"{Fault.Text(batch.ScaleResolution)} {batch.Unit.Word}";
        List<string> warnings = [];
        if (batch.Mass is { } mass && steps * batch.ScaleResolution != mass)
        {
            warnings.Add($"The batch is rounded from {Fault.Text(mass)} to {Fault.Text(steps * batch.ScaleResolution)} {batch.Unit.Word}, a whole number of steps of {step}.");
        }

        foreach (var (line, part) in formula.Lines.Zip(parts))
        {
            if (part == 0)
            {
                warnings.Add($"{line.Material} is less than half a step of the scale ({step}) and cannot be weighed. Make a larger batch, use a finer scale, or weigh a premix.");
            }
            else if (part < fewSteps)
            {
                warnings.Add($"{line.Material} is only {part} {(part == 1 ? "step" : "steps")} of the scale ({step}), so rounding alone can shift it by up to {Fault.Text(decimal.Round(100m / part))} %. Make a larger batch, use a finer scale, or weigh a premix.");
            }
        }

        if (batch.JarVolume is not null && jars is null)
        {
            warnings.Add("The formula has no density (see the section density), so the jars cannot be counted.");
        }
        else if (jars is { Wanted: { } wanted } && jars.Full < wanted)
        {
            warnings.Add($"The batch fills {jars.Full} of the {wanted} jars. Make a larger batch.");
        }

        return warnings;
    }
}
