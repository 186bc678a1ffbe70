using Materia.Formulation.Optimising;

namespace Materia.Formulation.Designing;

/// <summary>Where searches for a design begin.</summary>
internal sealed class DesignStarts
{
    private static readonly double[] Splits = [0.25, 0.5, 0.75];
    private readonly Objective objective;
    private readonly Region region;
    private readonly double[][] alone;

    public DesignStarts(Objective objective, Region region)
    {
        this.objective = objective;
        this.region = region;
        alone = [.. Enumerable.Range(0, region.Low.Length).Select(Outputs)];
    }

    /// <summary>The best mixture, then the best pairs brought into the region.</summary>
    public IEnumerable<double[]> All(int count)
    {
        if (Mixture() is { } mixture)
        {
            yield return mixture;
        }

        foreach (var pair in Pairs().OrderBy(p => p.Cost).ThenBy(p => p.A).ThenBy(p => p.B).Take(count - 1))
        {
            var shares = new double[region.Low.Length];
            shares[pair.A] += 100 * pair.Split;
            shares[pair.B] += 100 * (1 - pair.Split);
            if (Nearest(objective, region, shares) is { } start)
            {
                yield return start;
            }
        }
    }

    /// <summary>The best blend when every figure, solid content too, is taken as the mean of its materials'; <see langword="null"/> when no blend is allowed.</summary>
    public double[]? Mixture()
    {
        var slopes = alone.Select(o => o.Select(v => v / 100).ToArray()).ToArray();
        var nothing = new double[region.Low.Length];
        int[] all = [.. Enumerable.Range(0, nothing.Length)];
        return LinearStep.Solve(objective, region, nothing, new double[objective.Outputs], all, slopes, double.PositiveInfinity, 100) is var (step, _) ? step : null;
    }

    /// <summary>The blend of the region that moves the least from <paramref name="shares"/>.</summary>
    public static double[]? Nearest(Objective objective, Region region, double[] shares)
    {
        var model = objective.Model;
        var near = new Objective(model, [.. shares.Select((s, j) => new Goal(Objective.Share(model, j), s, s, 1))]);
        int[] all = [.. Enumerable.Range(0, shares.Length)];
        var slopes = all.Select(j =>
        {
            var slope = new double[near.Outputs];
            slope[Objective.Share(model, j)] = 1;
            return slope;
        }).ToArray();
        return LinearStep.Solve(near, region, new double[shares.Length], new double[near.Outputs], all, slopes, double.PositiveInfinity, 100) is var (step, _) ? step : null;
    }

    // A figure that a material has not is taken as met: it will dilute, not shift, the mean.
    private double[] Outputs(int column)
    {
        var shares = new double[region.Low.Length];
        shares[column] = 100;
        var outputs = objective.OutputsAt(shares);
        foreach (var goal in objective.Goals.Where(g => double.IsNaN(outputs[g.Output])))
        {
            outputs[goal.Output] = double.IsFinite(goal.Low) ? goal.Low : goal.High;
        }

        return outputs;
    }

    private IEnumerable<(int A, int B, double Split, double Cost)> Pairs()
    {
        var mixed = new double[objective.Outputs];
        for (var a = 0; a < alone.Length; a++)
        {
            for (var b = a + 1; b < alone.Length; b++)
            {
                foreach (var split in Splits)
                {
                    for (var k = 0; k < mixed.Length; k++)
                    {
                        mixed[k] = (split * alone[a][k]) + ((1 - split) * alone[b][k]);
                    }

                    yield return (a, b, split, objective.Of(mixed));
                }
            }
        }
    }
}
