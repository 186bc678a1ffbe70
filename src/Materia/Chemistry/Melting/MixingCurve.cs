using System.Collections.Concurrent;

namespace Materia.Chemistry.Melting;

/// <summary>
/// The ratio of solid to liquid of one species in a class with mixing weight θ, as a function of one number.
/// <para>With l moles liquid and s solid of z in all, s/S = (K·l/L)^(1/θ) gives, for w = ln(s/l) and m = 1/θ − 1,
/// w + m·ln(1 + e^w) = d with d = ln S + (ln K − ln L)/θ + m·ln z. Every species of every class with the same θ lies on this
/// one curve w(d), so it is tabulated once (cubic Hermite, step 1/32, error below 1e-8) and needs no iteration.</para>
/// </summary>
public sealed class MixingCurve
{
    private const double Reach = 48;
    private const int StepsPerUnit = 32;
    private static readonly ConcurrentDictionary<double, MixingCurve> Known = new();
    private readonly double m;
    private readonly double[] values;
    private readonly double[] slopes;

    private MixingCurve(double mixingWeight)
    {
        m = (1 / mixingWeight) - 1;
        var count = (int)(2 * Reach * StepsPerUnit) + 1;
        values = new double[count];
        slopes = new double[count];
        for (var i = 0; i < count; i++)
        {
            var w = Solve((i / (double)StepsPerUnit) - Reach);
            values[i] = w;
            slopes[i] = Slope(w) / StepsPerUnit;
        }
    }

    /// <summary>The curve for a mixing weight above 0.</summary>
    public static MixingCurve Of(double mixingWeight) => Known.GetOrAdd(mixingWeight, static weight => new MixingCurve(weight));

    /// <summary>w = ln(solid/liquid) at <paramref name="d"/>.</summary>
    public double At(double d)
    {
        var position = (d + Reach) * StepsPerUnit;
        if (!(position > 0))
        {
            return d;
        }

        var i = (int)position;
        if (i >= values.Length - 1)
        {
            return d / (1 + m);
        }

        var t = position - i;
        var u = 1 - t;
        return (u * u * (((1 + (2 * t)) * values[i]) + (t * slopes[i]))) + (t * t * (((1 + (2 * u)) * values[i + 1]) - (u * slopes[i + 1])));
    }

    private double Solve(double d)
    {
        var w = d < 0 ? d : d / (1 + m);
        for (var i = 0; i < 60; i++)
        {
            var step = (w + (m * Softplus(w)) - d) * Slope(w);
            w -= step;
            if (Math.Abs(step) < 1e-15 * Math.Max(1, Math.Abs(w)))
            {
                break;
            }
        }

        return w;
    }

    private double Slope(double w) => 1 / (1 + (m / (1 + Math.Exp(-w))));

    private static double Softplus(double w) => w > 0 ? w + Math.Log(1 + Math.Exp(-w)) : Math.Log(1 + Math.Exp(w));
}
