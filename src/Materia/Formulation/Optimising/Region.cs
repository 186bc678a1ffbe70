namespace Materia.Formulation.Optimising;

/// <summary>The blends that are allowed: bounds on each share, the sum of all, and bounds on the sums of groups [%].</summary>
/// <param name="Low">The least share of each material.</param>
/// <param name="High">The greatest share of each material.</param>
/// <param name="Groups">Bounds on sums.</param>
internal sealed record Region(double[] Low, double[] High, IReadOnlyList<GroupBound> Groups)
{
    /// <summary>What rounding leaves of a bound [percentage points].</summary>
    private const double Slack = 1e-7;

    /// <summary>The materials whose shares may change.</summary>
    public int[] Free() => [.. Enumerable.Range(0, Low.Length).Where(j => High[j] > Low[j])];

    /// <summary>By how much a blend passes bounds, all together [percentage points]; what rounding leaves does not count.</summary>
    public double Excess(decimal[] x)
    {
        double sum = 0;
        for (var j = 0; j < x.Length; j++)
        {
            sum += Beyond((double)x[j], Low[j], High[j]);
        }

        foreach (var group in Groups)
        {
            sum += Beyond(group.Columns.Sum(j => (double)x[j]), group.Low, group.High);
        }

        return sum;
    }

    private static double Beyond(double value, double low, double high) => Math.Max(low - value, value - high) is > Slack and var by ? by : 0;

    /// <summary>Whether a blend keeps all bounds; the sum is not looked at.</summary>
    public bool Holds(ReadOnlySpan<double> x)
    {
        for (var j = 0; j < x.Length; j++)
        {
            if (x[j] < Low[j] - Slack || x[j] > High[j] + Slack)
            {
                return false;
            }
        }

        foreach (var group in Groups)
        {
            double sum = 0;
            foreach (var j in group.Columns)
            {
                sum += x[j];
            }

            if (sum < group.Low - Slack || sum > group.High + Slack)
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>Bounds on the sum of some shares [%].</summary>
/// <param name="Columns">The materials.</param>
/// <param name="Low">The least sum.</param>
/// <param name="High">The greatest sum.</param>
internal sealed record GroupBound(int[] Columns, double Low, double High);
