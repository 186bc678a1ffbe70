using System.Collections.Concurrent;

namespace Materia.Chemistry.Melting;

/// <summary>
/// The share of one species that is solid, in a class with mixing weight θ, as a function of one number.
/// <para>With l moles liquid and s solid of z in all, s/S = (K·l/L)^(1/θ) gives, for w = ln(s/l) and m = 1/θ − 1,
/// w + m·ln(1 + e^w) = d with d = ln S + (ln K − ln L)/θ + m·ln z. Every species of every class with the same θ lies on this
/// one curve, so its share e^w/(1 + e^w) is tabulated once over d (cubic Hermite, step 1/32, relative error below 1e-8) and
/// needs neither iteration nor exponential.</para>
/// </summary>
public sealed class MixingCurve
{
    private const double Reach = 48;
    private const int StepsPerUnit = 32;
    private static readonly ConcurrentDictionary<double, MixingCurve> Known = new();
    private readonly double m;

    // Value and slope side by side: one look-up touches one line of memory.
    private readonly double[] table;

    private MixingCurve(double mixingWeight)
    {
        m = (1 / mixingWeight) - 1;
        var count = (int)(2 * Reach * StepsPerUnit) + 1;
        table = new double[2 * count];
        for (var i = 0; i < count; i++)
        {
            var share = Share(Solve((i / (double)StepsPerUnit) - Reach));
            table[2 * i] = share;
            table[(2 * i) + 1] = Slope(share) / StepsPerUnit;
        }
    }

    /// <summary>The curve for a mixing weight above 0.</summary>
    public static MixingCurve Of(double mixingWeight) => Known.GetOrAdd(mixingWeight, static weight => new MixingCurve(weight));

    /// <summary>The share that is solid at <paramref name="d"/>, 0 to 1.</summary>
    public double ShareAt(double d)
    {
        var position = (d + Reach) * StepsPerUnit;
        if (!(position > 0))
        {
            // So little is solid that ln(1 + e^w) is nothing.
            return Math.Exp(d);
        }

        var i = (int)position;
        if (2 * (i + 1) >= table.Length)
        {
            return Share(d / (1 + m));
        }

        var t = position - i;
        var u = 1 - t;
        var entry = table.AsSpan(2 * i, 4);
        return (u * u * (((1 + (2 * t)) * entry[0]) + (t * entry[1]))) + (t * t * (((1 + (2 * u)) * entry[2]) - (u * entry[3])));
    }

    /// <summary>The rise of the share with d, at a share.</summary>
    public double Slope(double share) => share * (1 - share) / (1 + (m * share));

    private static double Share(double w) => w > 0 ? 1 / (1 + Math.Exp(-w)) : Math.Exp(w) / (1 + Math.Exp(w));

    private static double Softplus(double w) => w > 0 ? w + Math.Log(1 + Math.Exp(-w)) : Math.Log(1 + Math.Exp(w));

    private double Solve(double d)
    {
        var w = d < 0 ? d : d / (1 + m);
        for (var i = 0; i < 60; i++)
        {
            var step = (w + (m * Softplus(w)) - d) / (1 + (m * Share(w)));
            w -= step;
            if (Math.Abs(step) < 1e-15 * Math.Max(1, Math.Abs(w)))
            {
                break;
            }
        }

        return w;
    }
}
