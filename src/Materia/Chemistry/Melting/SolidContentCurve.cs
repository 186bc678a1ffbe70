namespace Materia.Chemistry.Melting;

/// <summary>Solid content of a system in steps of 1 °C from −10 to 80 °C, and the temperatures at which it passes given values.</summary>
public sealed class SolidContentCurve
{
    /// <summary>The lowest temperature of a curve [Cel].</summary>
    public const int From = -10;

    /// <summary>The highest temperature of a curve [Cel].</summary>
    public const int To = 80;

    private const double HighestClearPoint = 130;
    private const double Tolerance = 0.02;
    private readonly PhaseEquilibrium equilibrium;
    private readonly double[] percent = new double[To - From + 1];

    /// <summary>Works out the curve of <paramref name="system"/>, from cold to warm.</summary>
    public SolidContentCurve(SpeciesSystem system)
    {
        equilibrium = new PhaseEquilibrium(system);
        for (var i = 0; i < percent.Length; i++)
        {
            // A later point within the solver's tolerance above the one before is the same point.
            var value = equilibrium.SolidContentAt(From + i);
            percent[i] = i > 0 ? Math.Min(value, percent[i - 1]) : value;
        }
    }

    /// <summary>The work space that the curve was made with, for questions at other temperatures.</summary>
    public PhaseEquilibrium Equilibrium => equilibrium;

    /// <summary>Solid content [% by mass of the fat phase] at a whole degree between <see cref="From"/> and <see cref="To"/>.</summary>
    public double At(int celsius) => percent[celsius - From];

    /// <summary>
    /// The lowest temperature [Cel] at which no more than <paramref name="solid"/> percent is left, within 0.02 °C;
    /// <see langword="null"/> when there is less than that at −10 °C already.
    /// </summary>
    public double? TemperatureAt(double solid)
    {
        if (percent[0] <= solid)
        {
            return null;
        }

        var i = Array.FindIndex(percent, p => p <= solid);
        double low = i < 0 ? To : From + i - 1, high = i < 0 ? HighestClearPoint : From + i;
        double above = (i < 0 ? percent[^1] : percent[i - 1]) - solid, below = (i < 0 ? 0 : percent[i]) - solid;

        // False position, the stale end's error halved (Illinois), so that a step in the curve is found as well as a slope.
        for (var side = 0; high - low > Tolerance;)
        {
            var middle = Math.Clamp(low + ((high - low) * above / (above - below)), low + (Tolerance / 4), high - (Tolerance / 4));
            var error = equilibrium.SolidContentAt(middle) - solid;
            if (error > 0)
            {
                (low, above) = (middle, error);
                below = side > 0 ? below / 2 : below;
                side = 1;
            }
            else
            {
                (high, below) = (middle, error);
                above = side < 0 ? above / 2 : above;
                side = -1;
            }
        }

        return (low + high) / 2;
    }
}
