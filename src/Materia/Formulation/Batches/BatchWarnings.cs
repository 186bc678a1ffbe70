using Materia.Formulation.Sections;

namespace Materia.Formulation.Batches;

/// <summary>What a maker should know before weighing.</summary>
internal static class BatchWarnings
{
    public static IReadOnlyList<string> Of(NormalisedBatch batch, long steps, IReadOnlyList<BatchRemedy> remedies, BatchRounding rounding, JarFilling? jars)
    {
        var step = $"{Fault.Text(batch.ScaleResolution)} {batch.Unit.Word}";
        List<string> warnings = [];
        if (batch.Mass is { } mass && steps * batch.ScaleResolution != mass)
        {
            warnings.Add($"The batch is rounded from {Fault.Text(mass)} to {Fault.Text(steps * batch.ScaleResolution)} {batch.Unit.Word}, a whole number of steps of {step}.");
        }

        warnings.AddRange(remedies.Select(r => r.Steps == 0
            ? $"{Name(r)} gets no step of the scale ({step}) and cannot be weighed. {r.Text}"
            : $"{Name(r)} is only {r.Steps} {(r.Steps == 1 ? "step" : "steps")} of the scale ({step}), so rounding alone can shift it by up to {Fault.Text(decimal.Round(100m / r.Steps))} %. {r.Text}"));
        warnings.AddRange(rounding.Limits.Where(l => l.Crossed).Select(l =>
            $"{l.Substance} ({l.Id}) is {Fault.Text(decimal.Round(l.AmountBefore, 6))} by the formula and {Fault.Text(decimal.Round(l.AmountAfter, 6))} by the weights, and the limit is {(l.Limit is { } limit ? Fault.Text(limit) : "passed")}. {l.WhatToDo}"));
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

    private static string Name(MaterialName line) => line.Ingredient ?? line.Own!;
}
