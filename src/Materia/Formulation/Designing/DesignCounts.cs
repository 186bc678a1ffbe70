using Materia.Formulation.Optimising;

namespace Materia.Formulation.Designing;

/// <summary>Brings a blend to the number of materials that is allowed.</summary>
internal static class DesignCounts
{
    /// <summary>What a material that only makes up the number gets at least [%].</summary>
    private const double LeastShare = 1;

    /// <summary>
    /// Leaves out the smallest shares until there are few enough, traces first, and gives further materials a least share until there are
    /// enough. The region is narrowed to what stays.
    /// </summary>
    /// <returns>False when the bounds leave no such blend.</returns>
    public static bool Bring(DesignCase request, Objective objective, ref Region region, ref double[] shares, double trace)
    {
        double[] low = [.. region.Low];
        double[] high = [.. region.High];
        var present = Enumerable.Range(0, shares.Length).Where(Stays(shares, low, trace)).OrderByDescending(Rank(shares, low)).ThenBy(j => j).Take(Math.Max(request.MostMaterials, 1)).ToHashSet();
        var now = shares;
        foreach (var j in Enumerable.Range(0, shares.Length).Where(j => !present.Contains(j)).OrderByDescending(j => now[j]).ThenBy(j => j).Take(Math.Max(0, request.Fewest - present.Count)).ToList())
        {
            present.Add(j);
        }

        for (var j = 0; j < shares.Length; j++)
        {
            high[j] = present.Contains(j) ? high[j] : 0;
            low[j] = present.Contains(j) && present.Count <= request.Fewest ? Math.Min(high[j], Math.Max(low[j], LeastShare)) : low[j];
        }

        var narrower = region with { Low = low, High = high };
        if (!ConstraintReading.IsFeasible(narrower) || DesignStarts.Nearest(objective, narrower, shares) is not { } nearest)
        {
            return false;
        }

        (region, shares) = (narrower, nearest);
        return true;
    }

    private static Func<int, bool> Stays(double[] shares, double[] low, double trace) => j => shares[j] > trace || low[j] > 0;

    // What the constraints ask for stays, whatever its share.
    private static Func<int, double> Rank(double[] shares, double[] low) => j => shares[j] + (low[j] > 0 ? 1000 : 0);
}
