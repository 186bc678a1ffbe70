using Materia.Formulation.Batches;

namespace Materia.Formulation.Normalising;

/// <summary>Checks how much is to be made.</summary>
internal static class BatchRules
{
    /// <summary>Ten tonnes [g]: more is a plant's batch, and more likely a wrong unit.</summary>
    private const decimal GreatestMass = 10_000_000m;

    /// <summary>The finest laboratory balance resolves 0.1 µg [g].</summary>
    private const decimal FinestScale = 0.000_000_1m;

    /// <summary>Ten cubic metres [mL], the volume of about that mass.</summary>
    private const decimal GreatestVolume = 10_000_000m;

    /// <summary>What a jar or drum may hold [g]: between a drop and a tonne.</summary>
    private const decimal LeastJar = 0.01m;
    private const decimal GreatestJar = 1_000_000m;

    private const decimal UsualHeadspace = 5;
    private const int MostJars = 100_000;

    public static NormalisedBatch? Check(FormulaBatch? batch, FaultList faults, List<string> notes)
    {
        if (batch is null)
        {
            return null;
        }

        var before = faults.Count;
        var unit = Unit(batch, faults);
        if (unit is not null)
        {
            CheckMass(batch, unit, faults);
            CheckScale(batch, unit, faults);
        }

        CheckJars(batch, unit, faults);
        faults.Within("/batch/volume", batch.Volume, 0.1m, GreatestVolume, "The volume to make [mL]");
        faults.Within("/batch/lossPercent", batch.LossPercent, 0, 90, "Loss [%]");
        if (faults.Count > before || unit is null)
        {
            return null;
        }

        if (batch.ScaleResolution is null)
        {
            notes.Add($"No scaleResolution was given; the batch is rounded for a scale that shows {Fault.Text(unit.UsualStep)} {unit.Word}.");
        }

        return new NormalisedBatch(
            batch.Mass, unit, batch.ScaleResolution ?? unit.UsualStep, batch.LossPercent ?? 0, batch.Jars, batch.JarVolume, batch.HeadspacePercent ?? UsualHeadspace)
        {
            Volume = batch.Volume,
            JarMass = batch.JarMass,
            Assumed = [.. Assumed(batch)],
        };
    }

    private static IEnumerable<string> Assumed(FormulaBatch batch)
    {
        if (batch is { JarVolume: not null, HeadspacePercent: null })
        {
            yield return $"No headspacePercent was given; {Fault.Text(UsualHeadspace)} % of each jar is left empty, as is common practice.";
        }

        if (batch.LossPercent is null)
        {
            yield return "No lossPercent was given; nothing is counted as left behind in beakers. Weigh what you fill once, and give the difference.";
        }
    }

    private static MassUnit? Unit(FormulaBatch batch, FaultList faults)
    {
        if (batch.Unit is { } word)
        {
            if (MassUnit.Find(word) is { } unit)
            {
                return unit;
            }

            faults.Add("/batch/unit", MassUnit.Refusal(word));
            return null;
        }

        if (batch.Mass is null)
        {
            return MassUnit.Gram;
        }

        faults.Add("/batch/unit", "Give the unit of the batch's mass: g, kg, mg, oz or lb.");
        return null;
    }

    private static void CheckMass(FormulaBatch batch, MassUnit unit, FaultList faults)
    {
        if (batch.Mass is not { } mass)
        {
            if (batch.Volume is null && (batch.Jars is null || batch is { JarVolume: null, JarMass: null }))
            {
                faults.Add("/batch/mass", "Say how much to make: \"mass\" and \"unit\", or \"volume\" in mL, or \"jars\" and \"jarVolume\" (in mL) or \"jarMass\".");
            }
        }
        else if (batch.Volume is not null)
        {
            faults.Add("/batch/volume", "Give the batch's mass or its volume, not both.");
        }
        else if (mass <= 0)
        {
            faults.Add("/batch/mass", $"The batch's mass must be over 0, and {Fault.Text(mass)} is not.");
        }
        else if (mass > GreatestMass / unit.Grams)
        {
            faults.Add("/batch/mass", $"{Fault.Text(mass)} {unit.Word} is more than ten tonnes. Correct the mass or its unit.");
        }
    }

    private static void CheckScale(FormulaBatch batch, MassUnit unit, FaultList faults)
    {
        if (batch.ScaleResolution is not { } resolution)
        {
            if (batch.Mass is > 0 and var small && small < unit.UsualStep)
            {
                faults.Add("/batch/scaleResolution", $"The batch is smaller than {Fault.Text(unit.UsualStep)} {unit.Word}, the step of a usual scale. Give the step of your scale.");
            }
        }
        else if (resolution <= 0)
        {
            faults.Add("/batch/scaleResolution", $"The smallest step of the scale must be over 0, and {Fault.Text(resolution)} is not.");
        }
        else if (resolution < FinestScale / unit.Grams)
        {
            faults.Add("/batch/scaleResolution", $"No balance shows steps of {Fault.Text(resolution)} {unit.Word}. Give the smallest step of your scale, in the unit of the batch.");
        }
        else if (batch.Mass is > 0 and var mass && resolution > mass)
        {
            faults.Add("/batch/scaleResolution", $"The step of the scale, {Fault.Text(resolution)} {unit.Word}, is more than the whole batch. Give it in the unit of the batch, or make more.");
        }
        else if (resolution > GreatestMass / unit.Grams)
        {
            faults.Add("/batch/scaleResolution", "The step of the scale is more than ten tonnes. Correct it.");
        }
    }

    private static void CheckJars(FormulaBatch batch, MassUnit? unit, FaultList faults)
    {
        faults.Within("/batch/jars", batch.Jars, 1, MostJars, "The number of jars");
        faults.Within("/batch/jarVolume", batch.JarVolume, 0.1m, 1_000_000, "The volume of a jar [mL]");
        faults.Within("/batch/headspacePercent", batch.HeadspacePercent, 0, 50, "Headspace [%]");
        if (batch is { Jars: not null, JarVolume: null, JarMass: null })
        {
            faults.Add("/batch/jarVolume", "Give the volume of one jar filled to the brim, in mL, or as \"jarMass\" the mass that goes into it.");
        }

        if (batch.JarMass is not { } mass)
        {
            return;
        }

        if (batch.JarVolume is not null)
        {
            faults.Add("/batch/jarMass", "Give the mass that goes into one jar or the jar's volume, not both.");
        }

        if (batch.HeadspacePercent is not null)
        {
            faults.Add("/batch/headspacePercent", "Headspace is a share of a jar's volume; with \"jarMass\" leave it out.");
        }

        if (mass <= 0)
        {
            faults.Add("/batch/jarMass", $"The mass that goes into a jar must be over 0, and {Fault.Text(mass)} is not.");
        }
        else if (unit is not null && (mass > GreatestJar / unit.Grams || mass * unit.Grams < LeastJar))
        {
            faults.Add("/batch/jarMass", $"No jar takes {Fault.Text(mass)} {unit.Word}. Give the mass in the unit of the batch.");
        }
    }
}
