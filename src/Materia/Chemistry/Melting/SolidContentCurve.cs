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
    private const int WidestStep = 8;

    /// <summary>A ten-thousandth of a point, far below what interpolation costs.</summary>
    private const double RoughTolerance = 1e-6;
    private readonly PhaseEquilibrium equilibrium;
    private readonly double[] percent = new double[To - From + 1];
    private readonly bool[] solved = new bool[To - From + 1];

    /// <summary>Works out the curve of <paramref name="system"/>, from cold to warm.</summary>
    /// <param name="system">The system.</param>
    /// <param name="every">
    /// True to solve at every degree. Otherwise the temperatures adapt: steps of up to 8 °C are halved, down to 1 °C, until the solid
    /// content falls by no more than half a point or a twentieth of itself, and a monotone interpolant fills the rest, whose error is
    /// smaller than that fall.
    /// </param>
    public SolidContentCurve(SpeciesSystem system, bool every = true)
    {
        equilibrium = every ? new PhaseEquilibrium(system) : new PhaseEquilibrium(system, RoughTolerance);
        Solve(0, 0);
        for (var i = 0; i < percent.Length - 1;)
        {
            var next = every ? i + 1 : Math.Min(i + WidestStep, percent.Length - 1);
            Solve(next, i);
            Refine(i, next);
            i = next;
        }

        if (!every)
        {
            MonotoneInterpolant.Fill(percent, solved);
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

        // Between the two solved temperatures on either side: what lies between them may be interpolated.
        var (before, after) = (0, -1);
        for (var i = 1; i < percent.Length && after < 0; i++)
        {
            (before, after) = !solved[i] ? (before, after) : percent[i] <= solid ? (before, i) : (i, after);
        }

        double low = From + before, high = after < 0 ? HighestClearPoint : From + after;
        double above = percent[before] - solid, below = (after < 0 ? 0 : percent[after]) - solid;

        // False position, the stale end's error halved (Illinois), so that a step in the curve is found as well as a slope.
        for (var side = 0; high - low > Tolerance;)
        {
            // Where nothing is asked for and nothing is left, the upper end is no guide and the middle is as good.
            var part = below == 0 ? 0.5 : above / (above - below);
            var middle = Math.Clamp(low + ((high - low) * part), low + (Tolerance / 4), high - (Tolerance / 4));
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

    private void Solve(int at, int before)
    {
        // A later point within the solver's tolerance above the one before is the same point.
        percent[at] = Math.Min(equilibrium.SolidContentAt(From + at), at > before ? percent[before] : double.PositiveInfinity);
        solved[at] = true;
    }

    private void Refine(int from, int to)
    {
        if (to - from < 2 || percent[from] - percent[to] <= Math.Max(0.5, percent[from] / 20))
        {
            return;
        }

        var middle = (from + to) / 2;
        Solve(middle, from);
        percent[middle] = Math.Max(percent[middle], percent[to]);
        Refine(from, middle);
        Refine(middle, to);
    }
}
