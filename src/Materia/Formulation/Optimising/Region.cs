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
