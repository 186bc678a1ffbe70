namespace Materia.Formulation.Optimising;

/// <summary>Brings a blend to tenths of a percent that add up exactly, then looks for better blends among its neighbours.</summary>
internal static class Tenths
{
    /// <summary>The step of a proposal [percentage points].</summary>
    public const decimal Step = 0.1m;

    private const int Rounds = 12;
    private const int TriedPerRound = 8;
    private static readonly decimal[] Moves = [0.1m, 0.5m];

    /// <summary>
    /// Rounds the free shares of <paramref name="x"/>: each down to a tenth, what is left in tenths to the largest remainders, and what is
    /// under a tenth (because a kept line is odd) to the largest share. Bounds that are no tenths are kept by the neighbours' search only.
    /// </summary>
    /// <param name="x">The blend.</param>
    /// <param name="region">The bounds.</param>
    /// <param name="free">The materials that may change.</param>
    /// <param name="total">What the free shares add up to.</param>
    public static decimal[] Round(double[] x, Region region, int[] free, decimal total)
    {
        var rounded = new decimal[x.Length];
        decimal left = total;
        foreach (var j in free)
        {
            rounded[j] = decimal.Floor((decimal)Math.Round(x[j], 6) / Step) * Step;
            left -= rounded[j];
        }

        var order = free.OrderByDescending(j => x[j] - (double)rounded[j]).ThenBy(j => j).ToArray();
        for (var i = 0; left >= Step && i < 10 * order.Length; i++)
        {
            var j = order[i % order.Length];
            if ((double)(rounded[j] + Step) <= region.High[j] + 1e-9 && (rounded[j] > 0 || x[j] > 0))
            {
                rounded[j] += Step;
                left -= Step;
            }
        }

        if (left != 0)
        {
            var largest = free.MaxBy(j => rounded[j]);
            rounded[largest] += left;
        }

        return rounded;
    }

    /// <summary>Moves tenths between free shares until all bounds are kept.</summary>
    /// <returns>False when that was not reached.</returns>
    public static bool Repair(Region region, decimal[] x, int[] free)
    {
        for (var round = 0; round < 10 * x.Length; round++)
        {
            var excess = region.Excess(x);
            if (excess == 0)
            {
                return true;
            }

            (int From, int To, double Excess) best = (-1, -1, excess);
            foreach (var from in free)
            {
                foreach (var to in free)
                {
                    if (from == to || x[from] < Step)
                    {
                        continue;
                    }

                    (x[from], x[to]) = (x[from] - Step, x[to] + Step);
                    best = region.Excess(x) is var there && there < best.Excess - 1e-9 ? (from, to, there) : best;
                    (x[from], x[to]) = (x[from] + Step, x[to] - Step);
                }
            }

            if (best.From < 0)
            {
                return false;
            }

            (x[best.From], x[best.To]) = (x[best.From] - Step, x[best.To] + Step);
        }

        return region.Excess(x) == 0;
    }

    /// <summary>Moves tenths between free shares as long as that makes the cost less; the linear model picks the moves that are tried.</summary>
    /// <returns>The cost.</returns>
    public static double Polish(Objective objective, Region region, decimal[] x, int[] free, Deadline deadline)
    {
        double[] at = [.. x.Select(v => (double)v)];
        var outputs = objective.OutputsAt(at);
        var cost = objective.Of(outputs);
        for (var round = 0; round < Rounds && !deadline.IsOver(); round++)
        {
            var slopes = SuccessiveProgrammes.Slopes(objective, at, outputs, free);
            var better = false;
            foreach (var (from, to, by) in Promising(objective, region, x, outputs, free, slopes))
            {
                var tried = at.AsSpan().ToArray();
                tried[from] = (double)(x[from] - by);
                tried[to] = (double)(x[to] + by);
                if (!region.Holds(tried))
                {
                    continue;
                }

                var there = objective.OutputsAt(tried);
                if (objective.Of(there) is var found && found < cost - 1e-9)
                {
                    x[from] -= by;
                    x[to] += by;
                    (at, outputs, cost, better) = (tried, there, found, true);
                    break;
                }
            }

            if (!better)
            {
                break;
            }
        }

        return cost;
    }

    private static IEnumerable<(int From, int To, decimal By)> Promising(
        Objective objective, Region region, decimal[] x, double[] outputs, int[] free, double[][] slopes)
    {
        var moves = new List<(double Foretold, int From, int To, decimal By)>();
        var there = new double[outputs.Length];
        for (var a = 0; a < free.Length; a++)
        {
            for (var b = 0; b < free.Length; b++)
            {
                foreach (var by in Moves)
                {
                    if (a == b || x[free[a]] - by < (decimal)region.Low[free[a]] || x[free[b]] + by > (decimal)region.High[free[b]])
                    {
                        continue;
                    }

                    for (var k = 0; k < there.Length; k++)
                    {
                        there[k] = outputs[k] + ((double)by * (slopes[b][k] - slopes[a][k]));
                    }

                    moves.Add((objective.Of(there), free[a], free[b], by));
                }
            }
        }

        return moves.OrderBy(m => m.Foretold).ThenBy(m => m.From).ThenBy(m => m.To).ThenBy(m => m.By).Take(TriedPerRound).Select(m => (m.From, m.To, m.By));
    }
}
