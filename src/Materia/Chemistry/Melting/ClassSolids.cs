namespace Materia.Chemistry.Melting;

/// <summary>
/// What each class of a system holds as crystals for a trial amount of liquid: one equation in one unknown for a class that mixes, a
/// closed form for species that crystallise alone. Starts are carried over from trial to trial and from temperature to temperature.
/// An instance is a work space for one system and one thread.
/// </summary>
internal sealed class ClassSolids
{
    private const int MostSteps = 200;

    // Slopes nearer to nothing are rounding: a double keeps some sixteen digits of a number near 1.
    private const double Flat = 1e-12;
    private readonly SpeciesSystem system;
    private readonly MixingCurve?[] curves;
    private readonly double[] offset;
    private readonly double[] solid;
    private readonly double[] presence;
    private readonly double[] start;
    private readonly double[] older;
    private readonly double[] drift;
    private readonly double tolerance;
    private double startsFor;

    /// <summary>Makes a work space for <paramref name="system"/>, whose classes add up to within <paramref name="tolerance"/> of themselves.</summary>
    public ClassSolids(SpeciesSystem system, double tolerance)
    {
        this.tolerance = tolerance;
        this.system = system;
        curves = [.. system.Classes.Select(c => c.Parameters.MixingWeight > 0 ? MixingCurve.Of(c.Parameters.MixingWeight) : null)];
        offset = new double[system.Count];
        solid = new double[system.Count];
        presence = new double[system.Classes.Length];
        start = new double[system.Classes.Length];
        older = new double[start.Length];
        drift = new double[start.Length];
        Array.Fill(start, double.NaN);
    }

    /// <summary>Solid amounts for the last trial, as mole fractions of everything.</summary>
    public ReadOnlySpan<double> Solid => solid;

    /// <summary>Turns to the temperature whose inverse [1/K] is given. False when everything is liquid there, and nothing is left to solve.</summary>
    public bool Prepare(double inverse)
    {
        for (var g = 0; g < system.Classes.Length; g++)
        {
            var c = system.Classes[g];
            var theta = c.Parameters.MixingWeight;
            var greatest = double.NegativeInfinity;
            for (var i = c.Start; i < c.End; i++)
            {
                var logK = (system.EnthalpyOverR[i] * (inverse - system.InverseMelting[i])) + system.LogPenalty[i];
                offset[i] = theta > 0 ? (logK + ((1 - theta) * system.LogFraction[i])) / theta : logK;
                greatest = Math.Max(greatest, offset[i] + system.LogFraction[i]);
            }

            if (theta > 0)
            {
                double sum = 0;
                for (var i = c.Start; i < c.End; i++)
                {
                    sum += Math.Exp(offset[i] + system.LogFraction[i] - greatest);
                }

                presence[g] = greatest + Math.Log(sum);
            }
            else
            {
                presence[g] = greatest;
            }
        }

        foreach (var level in presence)
        {
            if (level > 0)
            {
                return true;
            }
        }

        Array.Clear(solid);
        Array.Fill(start, double.NaN);
        return false;
    }

    /// <summary>Carries the unknowns of the last two temperatures on in a straight line.</summary>
    /// <param name="ahead">How many of the last steps to go on; not a number when there was none yet.</param>
    /// <param name="logL">ln L that the starts are then for.</param>
    public void Extrapolate(double ahead, double logL)
    {
        for (var g = 0; g < start.Length; g++)
        {
            var k = start[g];
            start[g] += double.IsNaN(ahead) ? 0 : ahead * (k - older[g]);
            older[g] = k;
        }

        startsFor = logL;
    }

    /// <summary>Fills the solids for a trial amount of liquid; gives what they leave, and its derivative by ln L.</summary>
    public (double Liquid, double Slope) Fill(double logL)
    {
        double taken = 0, slope = 0;
        for (var g = 0; g < system.Classes.Length; g++)
        {
            var (amount, change) = curves[g] is { } curve ? Mixed(g, curve, logL) : Pure(system.Classes[g], logL);
            taken += amount;
            slope -= change;
        }

        return (Math.Max(1 - taken, 1e-300), slope);
    }

    /// <summary>The share that is solid [1] of a species of a class, from its ln K, its mole fraction and ln L.</summary>
    public double ShareOf(CrystalClass @class, double logK, double fraction, double logLiquid)
    {
        var g = 0;
        while (g < system.Classes.Length && system.Classes[g].Class != @class)
        {
            g++;
        }

        if (g == system.Classes.Length)
        {
            return 0;
        }

        if (curves[g] is not { } curve)
        {
            return Math.Max(0, 1 - Math.Exp(logLiquid - logK - Math.Log(fraction)));
        }

        if (double.IsNaN(start[g]))
        {
            return 0;
        }

        var theta = system.Classes[g].Parameters.MixingWeight;
        var k = start[g] + (drift[g] * (logLiquid - startsFor));
        return curve.ShareAt(((logK + ((1 - theta) * Math.Log(fraction))) / theta) + k);
    }

    private (double Amount, double Change) Pure(SpeciesSystem.ClassRange c, double logL)
    {
        double amount = 0, change = 0;
        for (var i = c.Start; i < c.End; i++)
        {
            var saturated = Math.Exp(logL - offset[i]);
            var crystals = system.Fraction[i] - saturated;
            solid[i] = Math.Max(crystals, 0);
            if (crystals > 0)
            {
                amount += crystals;
                change -= saturated;
            }
        }

        return (amount, change);
    }

    private (double Amount, double Change) Mixed(int g, MixingCurve curve, double logL)
    {
        var c = system.Classes[g];
        var theta = c.Parameters.MixingWeight;
        var fraction = system.Fraction;
        var target = logL / theta;
        if (target >= presence[g])
        {
            Array.Clear(solid, c.Start, c.End - c.Start);
            start[g] = double.NaN;
            drift[g] = 0;
            return (0, 0);
        }

        // The unknown is k = ln S - ln L / θ; ln Σ solid(k) - k falls from the presence limit to minus infinity.
        double high = Math.Log(c.Amount) - target, low = high - 700;
        var carried = start[g] + (drift[g] * (logL - startsFor));
        var k = double.IsFinite(carried) ? Math.Clamp(carried, low, high) : Math.Min(high, presence[g] - target < 1 ? high - 1 : high);
        double amount = 0, rise = 0;
        for (var step = 0; step < MostSteps; step++)
        {
            amount = 0;
            rise = 0;
            for (var i = c.Start; i < c.End; i++)
            {
                var share = curve.ShareAt(offset[i] + k);
                var s = fraction[i] * share;
                solid[i] = s;
                amount += s;
                rise += fraction[i] * curve.Slope(share);
            }

            var error = Math.Log(amount) - k - target;
            if (Math.Abs(error) < tolerance)
            {
                break;
            }

            if (error > 0)
            {
                low = k;
            }
            else
            {
                high = k;
            }

            if (high - low < 1e-13 * Math.Max(1, Math.Abs(k)))
            {
                break;
            }

            var next = k - (error / ((rise / amount) - 1));
            k = next > low && next < high ? next : (low + high) / 2;
        }

        // What the unknown does when the liquid changes: the start of the next trial. A species alone in its class, just where it
        // melts, lets the unknown run away; nothing is carried on then.
        var slope = (rise / amount) - 1;
        drift[g] = slope < -Flat ? 1 / (theta * slope) : 0;
        start[g] = k - (drift[g] * (logL - startsFor));
        return (amount, rise * drift[g]);
    }
}
