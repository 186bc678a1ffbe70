namespace Materia.Chemistry.Melting;

/// <summary>
/// Puts fatty acids on glycerol: the outer positions are filled at random from one composition, the middle from another
/// (1,3-random-2-random). With overall mole fractions x and middle fractions y the outer ones are o = (3x − y)/2.
/// </summary>
public static class PositionalDistribution
{
    /// <summary>Middle composition for a given ratio of the saturated fraction at sn-2 to the saturated fraction overall; inside each block the overall proportions are kept.</summary>
    /// <param name="overall">Mole fractions of the chains, adding up to 1.</param>
    /// <param name="ratio">0 for no saturated chain in the middle, 1 for random.</param>
    public static double[] Middle(IReadOnlyList<(Chain Chain, double Fraction)> overall, double ratio)
    {
        var saturated = overall.Where(p => p.Chain.IsSaturated).Sum(p => p.Fraction);
        var unsaturated = 1 - saturated;
        var middleUnsaturated = Math.Min(1 - Math.Min(ratio * saturated, 1), 3 * unsaturated);
        var middleSaturated = 1 - middleUnsaturated;
        return [.. overall.Select(p => p.Chain.IsSaturated ? Scale(p.Fraction, middleSaturated, saturated) : Scale(p.Fraction, middleUnsaturated, unsaturated))];
    }

    /// <summary>All triacylglycerols with their mole fractions, mirror images merged, adding up to 1.</summary>
    public static Dictionary<Triacylglycerol, double> Distribute(IReadOnlyList<(Chain Chain, double Fraction)> overall, IReadOnlyList<double> middle)
    {
        var outer = new double[overall.Count];
        for (var i = 0; i < outer.Length; i++)
        {
            outer[i] = Math.Max(((3 * overall[i].Fraction) - middle[i]) / 2, 0);
        }

        var sum = outer.Sum();
        var fats = new Dictionary<Triacylglycerol, double>();
        for (var i = 0; i < outer.Length; i++)
        {
            for (var k = i; k < outer.Length; k++)
            {
                var pair = outer[i] * outer[k] / (sum * sum) * (i == k ? 1 : 2);
                for (var j = 0; j < outer.Length; j++)
                {
                    if (pair * middle[j] is > 0 and var share)
                    {
                        var fat = new Triacylglycerol(overall[i].Chain, overall[j].Chain, overall[k].Chain);
                        fats[fat] = fats.GetValueOrDefault(fat) + share;
                    }
                }
            }
        }

        return fats;
    }

    private static double Scale(double part, double to, double from) => from > 0 ? part * to / from : 0;
}
