using Materia.Chemistry;
using Materia.Chemistry.Rules;

namespace Materia.Formulation.Batches;

/// <summary>What a batch fills.</summary>
public sealed record JarFilling
{
    /// <summary>How many jars were asked for, where that was given.</summary>
    public int? Wanted { get; init; }

    /// <summary>The volume that goes into one jar: the brimful volume less the headspace [mL].</summary>
    public required decimal FillVolume { get; init; }

    /// <summary>The mass that goes into one jar [g].</summary>
    public required double MassInJar { get; init; }

    /// <summary>The least mass that the range of the density allows [g].</summary>
    public required double MassInJarLow { get; init; }

    /// <summary>The greatest mass that the range of the density allows [g].</summary>
    public required double MassInJarHigh { get; init; }

    /// <summary>The jars that the expected yield fills wholly.</summary>
    public required long Full { get; init; }

    /// <summary>The jars needed to take up all of it.</summary>
    public required long Needed { get; init; }

    internal static JarFilling Of(decimal jarVolume, decimal headspacePercent, int? wanted, decimal yieldInGrams, TemperatureFigure density)
    {
        var (brim, headspace) = ((double)jarVolume, (double)headspacePercent);
        var mass = FillMass.Of(brim, density.Value, headspace);
        var jars = (double)yieldInGrams / mass;
        return new JarFilling
        {
            Wanted = wanted,
            FillVolume = jarVolume * (1 - (headspacePercent / 100)),
            MassInJar = mass,
            MassInJarLow = FillMass.Of(brim, density.Low, headspace),
            MassInJarHigh = FillMass.Of(brim, density.High, headspace),
            Full = (long)Math.Floor(jars + Slack),
            Needed = (long)Math.Ceiling(jars - Slack),
        };
    }

    // A batch sized for six jars must not come out as 5.9999999 jars by binary rounding.
    private const double Slack = 1e-9;
}
