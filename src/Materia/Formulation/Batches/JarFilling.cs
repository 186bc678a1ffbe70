using Materia.Chemistry;

namespace Materia.Formulation.Batches;

/// <summary>What a batch fills.</summary>
public sealed record JarFilling
{
    /// <summary>How many jars were asked for, where that was given.</summary>
    public int? Wanted { get; init; }

    /// <summary>The volume that goes into one jar: the brimful volume less the headspace [mL].</summary>
    public required decimal FillVolume { get; init; }

    /// <summary>The mass that goes into one jar [g].</summary>
    public required double FillMass { get; init; }

    /// <summary>The least mass that the range of the density allows [g].</summary>
    public required double FillMassLow { get; init; }

    /// <summary>The greatest mass that the range of the density allows [g].</summary>
    public required double FillMassHigh { get; init; }

    /// <summary>The jars that the expected yield fills wholly.</summary>
    public required long Full { get; init; }

    /// <summary>The jars needed to take up all of it.</summary>
    public required long Needed { get; init; }

    internal static JarFilling Of(decimal jarVolume, decimal headspacePercent, int? wanted, decimal yieldInGrams, TemperatureFigure density)
    {
        var volume = jarVolume * (1 - (headspacePercent / 100));
        var mass = (double)volume * density.Value;
        var jars = (double)yieldInGrams / mass;
        return new JarFilling
        {
            Wanted = wanted,
            FillVolume = volume,
            FillMass = mass,
            FillMassLow = (double)volume * density.Low,
            FillMassHigh = (double)volume * density.High,
            Full = (long)Math.Floor(jars + Slack),
            Needed = (long)Math.Ceiling(jars - Slack),
        };
    }

    // A batch sized for six jars must not come out as 5.9999999 jars by binary rounding.
    private const double Slack = 1e-9;
}
