using Materia.Chemistry;
using Materia.Chemistry.Rules;

namespace Materia.Formulation.Batches;

/// <summary>What a batch fills.</summary>
public sealed record JarFilling
{
    // A batch sized for six jars must not come out as 5.9999999 jars by binary rounding.
    private const double Slack = 1e-9;

    /// <summary>How many jars were asked for, where that was given.</summary>
    public int? Wanted { get; init; }

    /// <summary>The volume that goes into one jar: the brimful volume less the headspace [mL]; absent where the jar is given by mass.</summary>
    public decimal? FillVolume { get; init; }

    /// <summary>The share of a jar that stays empty [%]; absent where the jar is given by mass.</summary>
    public decimal? HeadspacePercent { get; init; }

    /// <summary>The mass that goes into one jar [g].</summary>
    public required double MassInJar { get; init; }

    /// <summary>The least mass that the range of the density allows [g].</summary>
    public required double MassInJarLow { get; init; }

    /// <summary>The greatest mass that the range of the density allows [g].</summary>
    public required double MassInJarHigh { get; init; }

    /// <summary>The jars that the expected yield fills wholly.</summary>
    public required long Full { get; init; }

    /// <summary>The jars that it fills wholly if the density is at its upper end.</summary>
    public required long FullLow { get; init; }

    /// <summary>The jars that it fills wholly if the density is at its lower end.</summary>
    public required long FullHigh { get; init; }

    /// <summary>What is left over when the full jars are filled [g].</summary>
    public required double Remainder { get; init; }

    /// <summary>The jars needed to take up all of it.</summary>
    public required long Needed { get; init; }

    /// <summary>True when the mass in a jar hangs on a computed density.</summary>
    public required bool Approximate { get; init; }

    /// <summary>What <paramref name="grams"/> fill; <see langword="null"/> when no jar is given, or its volume is and there is no density.</summary>
    internal static JarFilling? Of(NormalisedBatch batch, decimal grams, TemperatureFigure? density)
    {
        if (batch.JarMass is { } inJar)
        {
            var mass = (double)(inJar * batch.Unit.Grams);
            return Fill(batch, (double)grams, mass, mass, mass);
        }

        if (batch.JarVolume is not { } volume || density is null)
        {
            return null;
        }

        var (brim, headspace) = ((double)volume, (double)batch.HeadspacePercent);
        return Fill(
            batch, (double)grams, FillMass.Of(brim, density.Value, headspace), FillMass.Of(brim, density.Low, headspace), FillMass.Of(brim, density.High, headspace)) with
        {
            FillVolume = volume * (1 - (batch.HeadspacePercent / 100)),
            HeadspacePercent = batch.HeadspacePercent,
            Approximate = true,
        };
    }

    private static JarFilling Fill(NormalisedBatch batch, double grams, double mass, double low, double high)
    {
        var full = Whole(grams / mass);
        return new JarFilling
        {
            Wanted = batch.Jars,
            MassInJar = mass,
            MassInJarLow = low,
            MassInJarHigh = high,
            Full = full,
            FullLow = Whole(grams / high),
            FullHigh = Whole(grams / low),
            Remainder = Math.Max(0, grams - (full * mass)),
            Needed = (long)Math.Ceiling((grams / mass) - Slack),
            Approximate = false,
        };
    }

    private static long Whole(double jars) => double.IsFinite(jars) ? (long)Math.Floor(jars + Slack) : 0;
}
