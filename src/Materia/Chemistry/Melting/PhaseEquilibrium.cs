namespace Materia.Chemistry.Melting;

/// <summary>
/// How much of each species is solid at a temperature: ideal liquid, classes mutually insoluble, each class one solid
/// solution with its mixing weight θ (θ = 0: every species alone).
/// <para>Equilibrium: x_solid = (K·x_liquid)^(1/θ) with ln K = (ΔH/R)(1/T − 1/Tm), and Σ x_solid = 1 in each class present.
/// Two nested one-dimensional equations remain: for a trial amount of liquid L each class has one unknown, and the classes'
/// solids must leave exactly L. Both are monotone, so a Newton step that leaves its bracket is replaced by a bisection and
/// convergence is certain. Starts are carried over from the last temperature.</para>
/// An instance is a work space for one system and one thread.
/// </summary>
public sealed class PhaseEquilibrium
{
    private const double LeastLogLiquid = -14;
    private const double Tolerance = 1e-10;
    private const int MostSteps = 200;
    private readonly SpeciesSystem system;
    private readonly MixingCurve?[] curves;
    private readonly double[] offset;
    private readonly double[] solid;
    private readonly double[] presence;
    private readonly double[] start;
    private readonly double[] older;
    private readonly double[] drift;
    private double logLiquid = -0.1;
    private double olderLogLiquid;
    private double startsFor;
    private double lastKelvin;
    private double olderKelvin;

    /// <summary>Makes a work space for <paramref name="system"/>.</summary>
    public PhaseEquilibrium(SpeciesSystem system)
    {
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

    /// <summary>Solid amounts of the last temperature solved, as mole fractions of everything.</summary>
    public ReadOnlySpan<double> Solid => solid;

    /// <summary>Solves for <paramref name="celsius"/> and returns the solid content [% by mass], crystallinity included.</summary>
    public double SolidContentAt(double celsius)
    {
        Solve(celsius + 273.15);
        double sum = 0;
        foreach (var c in system.Classes)
        {
            double part = 0;
            for (var i = c.Start; i < c.End; i++)
            {
                part += solid[i] * system.SolidMass[i];
            }

            sum += part * c.Parameters.Crystallinity;
        }

        return 100 * sum;
    }

    /// <summary>The heat that melts what is solid at <paramref name="celsius"/>, at full crystallinity [J/g].</summary>
    public double LatentHeatAt(double celsius)
    {
        Solve(celsius + 273.15);
        double heat = 0;
        for (var i = 0; i < solid.Length; i++)
        {
            heat += solid[i] * system.EnthalpyOverR[i];
        }

        return heat * SpeciesSystem.GasConstant / system.MeanMolarMass;
    }

    /// <summary>
    /// The share that is solid [1] of a species of the class, at the last temperature solved: lets single species be looked at
    /// after a system of grouped ones was solved.
    /// </summary>
    /// <param name="class">The class.</param>
    /// <param name="logK">ln K of the species at that temperature.</param>
    /// <param name="fraction">Its mole fraction of everything.</param>
    public double SolidShare(CrystalClass @class, double logK, double fraction)
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

    private void Solve(double kelvin)
    {
        Prepare(1 / kelvin);
        if (AllLiquid())
        {
            Array.Clear(solid);
            Array.Fill(start, double.NaN);
            logLiquid = 0;
            return;
        }

        Extrapolate(kelvin);
        double low = LeastLogLiquid, high = 0;
        var at = Math.Clamp(logLiquid, low, high - 1e-9);
        for (var i = 0; i < MostSteps; i++)
        {
            var (liquid, slope) = SolidsFor(at);
            var error = Math.Log(liquid) - at;
            if (Math.Abs(error) < Tolerance)
            {
                break;
            }

            if (error > 0)
            {
                low = at;
            }
            else
            {
                high = at;
            }

            if (high - low < 1e-13)
            {
                break;
            }

            // d ln(liquid)/d ln L comes with the solids; the whole slope is never above -1 + what the classes take up.
            var next = at - (error / ((slope / liquid) - 1));
            at = next > low && next < high ? next : (low + high) / 2;
        }

        logLiquid = at;
    }

    private bool AllLiquid()
    {
        foreach (var level in presence)
        {
            if (level > 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Carries the unknowns of the last two temperatures on in a straight line, as a start that costs nothing.</summary>
    private void Extrapolate(double kelvin)
    {
        var now = logLiquid;
        if (olderKelvin > 0 && lastKelvin > 0 && Math.Abs(lastKelvin - olderKelvin) > 1e-6)
        {
            var ahead = Math.Clamp((kelvin - lastKelvin) / (lastKelvin - olderKelvin), -2, 2);
            logLiquid += ahead * (logLiquid - olderLogLiquid);
            for (var g = 0; g < start.Length; g++)
            {
                var k = start[g];
                start[g] += ahead * (k - older[g]);
                older[g] = k;
            }
        }
        else
        {
            Array.Copy(start, older, start.Length);
        }

        (olderKelvin, lastKelvin, olderLogLiquid) = (lastKelvin, kelvin, now);
        startsFor = logLiquid;
    }

    private void Prepare(double inverse)
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
    }

    /// <summary>Fills the solids for a trial amount of liquid; gives what they leave, and its derivative by ln L.</summary>
    private (double Liquid, double Slope) SolidsFor(double logL)
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
        var k = double.IsNaN(start[g]) ? Math.Min(high, presence[g] - target < 1 ? high - 1 : high) : Math.Clamp(start[g] + (drift[g] * (logL - startsFor)), low, high);
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
            if (Math.Abs(error) < Tolerance)
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

        // What the unknown does when the liquid changes: the start of the next trial.
        var slope = (rise / amount) - 1;
        drift[g] = 1 / (theta * slope);
        start[g] = k - (drift[g] * (logL - startsFor));
        return (amount, rise * drift[g]);
    }
}
