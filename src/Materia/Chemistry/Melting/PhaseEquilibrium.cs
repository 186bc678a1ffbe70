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
    private const double FinestTolerance = 1e-10;
    private const int MostSteps = 200;
    private readonly ClassSolids solids;
    private readonly double tolerance;
    private double logLiquid = -0.1;
    private double olderLogLiquid;
    private double lastKelvin;
    private double olderKelvin;

    /// <summary>Makes a work space for <paramref name="system"/>.</summary>
    /// <param name="system">The system.</param>
    /// <param name="tolerance">How closely the amounts must add up, as parts of the liquid and of each class [1].</param>
    public PhaseEquilibrium(SpeciesSystem system, double tolerance = FinestTolerance)
    {
        System = system;
        this.tolerance = tolerance;
        solids = new(system, tolerance);
    }

    /// <summary>The system that is solved.</summary>
    public SpeciesSystem System { get; }

    /// <summary>Solid amounts of the last temperature solved, as mole fractions of everything.</summary>
    public ReadOnlySpan<double> Solid => solids.Solid;

    /// <summary>Solves for <paramref name="celsius"/> and returns the solid content [% by mass], crystallinity included.</summary>
    public double SolidContentAt(double celsius)
    {
        Solve(celsius + 273.15);
        double sum = 0;
        foreach (var c in System.Classes)
        {
            double part = 0;
            for (var i = c.Start; i < c.End; i++)
            {
                part += Solid[i] * System.SolidMass[i];
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
        for (var i = 0; i < Solid.Length; i++)
        {
            heat += Solid[i] * System.EnthalpyOverR[i];
        }

        return heat * SpeciesSystem.GasConstant / System.MeanMolarMass;
    }

    /// <summary>
    /// The share that is solid [1] of a species of the class, at the last temperature solved: lets single species be looked at
    /// after a system of grouped ones was solved.
    /// </summary>
    /// <param name="class">The class.</param>
    /// <param name="logK">ln K of the species at that temperature.</param>
    /// <param name="fraction">Its mole fraction of everything.</param>
    public double SolidShare(CrystalClass @class, double logK, double fraction) => solids.ShareOf(@class, logK, fraction, logLiquid);

    private void Solve(double kelvin)
    {
        if (!solids.Prepare(1 / kelvin))
        {
            logLiquid = 0;
            return;
        }

        Extrapolate(kelvin);
        double low = LeastLogLiquid, high = 0;
        var at = Math.Clamp(logLiquid, low, high - 1e-9);
        for (var i = 0; i < MostSteps; i++)
        {
            var (liquid, slope) = solids.Fill(at);
            var error = Math.Log(liquid) - at;
            if (Math.Abs(error) < tolerance)
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

    /// <summary>Carries the unknowns of the last two temperatures on in a straight line, as a start that costs nothing.</summary>
    private void Extrapolate(double kelvin)
    {
        var now = logLiquid;
        var ahead = olderKelvin > 0 && lastKelvin > 0 && Math.Abs(lastKelvin - olderKelvin) > 1e-6
            ? Math.Clamp((kelvin - lastKelvin) / (lastKelvin - olderKelvin), -2, 2)
            : double.NaN;
        logLiquid += double.IsNaN(ahead) ? 0 : ahead * (logLiquid - olderLogLiquid);
        solids.Extrapolate(ahead, logLiquid);
        (olderKelvin, lastKelvin, olderLogLiquid) = (lastKelvin, kelvin, now);
    }
}
