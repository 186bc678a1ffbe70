using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>
/// Finds promising replacements of one material among many. Each candidate is tried in place of it with the true figures; mixtures of two
/// and three are judged by taking the outputs between those trials as linear, first at the same total, then with the free lines moved.
/// </summary>
internal sealed class ReplacementScreen
{
    /// <summary>What a figure that a candidate cannot give counts as: two noticeable steps off, so that a gap never passes for agreement.</summary>
    public const double MissingSteps = 2;

    private const int SinglesKept = 30;
    private const int PairsKept = 36;
    private const int TriplesKept = 16;
    private static readonly double[] Whole = [1];
    private static readonly double[][] Splits = [.. Enumerable.Range(1, 9).Select(t => new[] { t / 10.0, 1 - (t / 10.0) })];
    private static readonly double[] Thirds = [0.1, 0.2, 0.35];
    private readonly Objective objective;
    private readonly double amount;
    private readonly int[] candidates;
    private readonly double[][] swapped;
    private readonly Goal[] figures;

    /// <param name="objective">What is made least.</param>
    /// <param name="original">The blend with the missing material in it.</param>
    /// <param name="missing">The columns that go out.</param>
    /// <param name="candidates">The columns that may come in.</param>
    /// <param name="deadline">When to stop.</param>
    public ReplacementScreen(Objective objective, double[] original, int[] missing, int[] candidates, Deadline deadline)
    {
        this.objective = objective;

        // The goals of shares alone decide between formulas that figures do not tell apart; they count when lines are moved.
        figures = [.. objective.Goals.Where(g => g.Output < 2 * objective.Model.Figures.Count && g.Cost > 0)];
        amount = missing.Sum(m => original[m]);
        var before = objective.OutputsAt(original);
        var without = original.AsSpan().ToArray();
        foreach (var m in missing)
        {
            without[m] = 0;
        }

        var tried = new List<int>();
        var outputs = new List<double[]>();
        foreach (var candidate in candidates)
        {
            if (deadline.IsOver() && tried.Count > 0)
            {
                break;
            }

            without[candidate] += amount;
            tried.Add(candidate);
            outputs.Add(Filled(objective.OutputsAt(without), before));
            without[candidate] -= amount;
        }

        this.candidates = [.. tried];
        swapped = [.. outputs];
    }

    /// <summary>The best sets of one, two and three materials at an unchanged total, before free lines are moved.</summary>
    public IReadOnlyList<Replacement> Sets()
    {
        var singles = Best(Enumerable.Range(0, candidates.Length).Select(a => (new[] { a }, Whole, objective.Of(swapped[a]))), SinglesKept);
        var pairs = Best(Pairs(), PairsKept);
        var triples = Best(Triples(pairs), TriplesKept);
        return [.. singles.Concat(pairs).Concat(triples).Select(s => new Replacement([.. s.Places.Select(p => candidates[p])], s.Split, s.Cost))];
    }

    /// <summary>The outputs of a candidate in the whole missing amount's place.</summary>
    public double[] Swapped(int column) => swapped[Array.IndexOf(candidates, column)];

    private double[] Filled(double[] outputs, double[] before)
    {
        for (var f = 0; f < objective.Model.Figures.Count; f++)
        {
            if (double.IsNaN(outputs[f]))
            {
                outputs[f] = before[f] + (MissingSteps * objective.Model.Figures[f].Step);
            }
        }

        return outputs;
    }

    private IEnumerable<(int[] Places, double[] Split, double Cost)> Pairs()
    {
        for (var a = 0; a < candidates.Length; a++)
        {
            for (var b = a + 1; b < candidates.Length; b++)
            {
                yield return BestSplit([a, b], Splits);
            }
        }
    }

    private IEnumerable<(int[] Places, double[] Split, double Cost)> Triples(IReadOnlyList<(int[] Places, double[] Split, double Cost)> pairs)
    {
        foreach (var (places, split, _) in pairs.Take(TriplesKept))
        {
            for (var c = 0; c < candidates.Length; c++)
            {
                if (!places.Contains(c))
                {
                    yield return BestSplit([.. places, c], [.. Thirds.Select(t => new[] { split[0] * (1 - t), split[1] * (1 - t), t })]);
                }
            }
        }
    }

    private (int[] Places, double[] Split, double Cost) BestSplit(int[] places, double[][] splits)
    {
        (int[], double[], double Cost) best = (places, [], double.PositiveInfinity);
        foreach (var split in splits)
        {
            double cost = 0;
            foreach (var goal in figures)
            {
                double value = 0;
                for (var i = 0; i < places.Length; i++)
                {
                    value += split[i] * swapped[places[i]][goal.Output];
                }

                cost += goal.Of(value);
            }

            if (cost < best.Cost)
            {
                best = (places, split, cost);
            }
        }

        return best;
    }

    private static List<(int[] Places, double[] Split, double Cost)> Best(IEnumerable<(int[] Places, double[] Split, double Cost)> sets, int count) =>
        [.. sets.OrderBy(s => s.Cost).ThenBy(s => s.Places[0]).ThenBy(s => s.Places[^1]).Take(count)];
}
