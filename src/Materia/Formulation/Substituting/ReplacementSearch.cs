using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>Searches the nearest formulas in which one material is replaced by one to three others and the kept lines are balanced anew.</summary>
internal sealed class ReplacementSearch
{
    /// <summary>How many sets of materials are worked out with the true figures.</summary>
    private const int Refined = 14;

    /// <summary>How many of them at least are single materials, which makers like best.</summary>
    private const int Singles = 4;

    private const int Steps = 4;
    private const double Radius = 8;

    /// <summary>Less of a material than this is left out again [%].</summary>
    private const double Trace = 0.15;

    private readonly Objective objective;
    private readonly decimal[] current;
    private readonly double[] start;
    private readonly int[] missing;
    private readonly int[] kept;
    private readonly int[] candidates;
    private readonly double amount;
    private readonly Deadline deadline;
    private readonly Func<int, double> most;

    public ReplacementSearch(Objective objective, decimal[] current, int[] missing, int[] kept, int[] candidates, Func<int, double> most, Deadline deadline)
    {
        this.most = most;
        this.objective = objective;
        this.current = current;
        this.missing = missing;
        this.kept = kept;
        this.candidates = candidates;
        this.deadline = deadline;
        start = [.. current.Select(s => (double)s)];
        amount = missing.Sum(m => start[m]);
    }

    /// <summary>The formulas, nearest first.</summary>
    /// <param name="limit">How many to give.</param>
    /// <param name="guard">The limits to keep; <see langword="null"/> where more has to go out first.</param>
    public IReadOnlyList<Draft> Run(int limit, LimitGuard? guard)
    {
        var screen = new ReplacementScreen(objective, start, missing, candidates, deadline);
        var before = objective.OutputsAt(start);
        var slopes = SuccessiveProgrammes.Slopes(objective, start, before, [.. kept, missing[0]]);
        var balanced = new List<(Region Region, double[] Shares, double Cost)>();
        foreach (var set in screen.Sets())
        {
            if (deadline.IsOver() && balanced.Count > 0)
            {
                break;
            }

            balanced.Add(Balance(set, screen, before, slopes));
        }

        if (Nothing(balanced))
        {
            balanced.Add((RegionOf([]), [.. start], 0));
        }

        var refined = Refine(balanced);
        return Finish(refined, limit, guard);
    }

    // Where nothing can come in, the kept lines may still take the place.
    private bool Nothing(List<(Region Region, double[] Shares, double Cost)> balanced) => balanced.Count == 0 && kept.Length > 0;

    private Region RegionOf(int[] columns)
    {
        double[] low = [.. start];
        double[] high = [.. start];
        double room = 0;
        foreach (var j in kept)
        {
            low[j] = Math.Min(start[j], Math.Max(0.1, start[j] / 2));
            high[j] = Math.Max(1.5 * start[j], start[j] + amount);
            room += start[j] - low[j];
        }

        foreach (var m in missing)
        {
            low[m] = high[m] = 0;
        }

        foreach (var j in columns)
        {
            high[j] = kept.Length > 0 ? Math.Min(most(j), amount + room) : amount;
        }

        return new Region(low, high, []);
    }

    private (Region Region, double[] Shares, double Cost) Balance(Replacement set, ReplacementScreen screen, double[] before, double[][] slopes)
    {
        var region = RegionOf(set.Columns);
        double[] shares = [.. start];
        foreach (var m in missing)
        {
            shares[m] = 0;
        }

        var outputs = new double[objective.Outputs];
        for (var i = 0; i < set.Columns.Length; i++)
        {
            shares[set.Columns[i]] = set.Split[i] * amount;
            var swapped = screen.Swapped(set.Columns[i]);
            for (var k = 0; k < outputs.Length; k++)
            {
                outputs[k] += set.Split[i] * swapped[k];
            }
        }

        if (kept.Length == 0)
        {
            return (region, shares, set.Cost);
        }

        // Columns in the region's order; a candidate's slope is that of putting it in the missing material's place, and the material's own.
        var free = region.Free();
        var lines = new double[free.Length][];
        for (var i = 0; i < free.Length; i++)
        {
            var place = Array.IndexOf(kept, free[i]);
            lines[i] = place >= 0 ? slopes[place] : Slope(screen.Swapped(free[i]), before, slopes[^1]);
        }

        if (LinearStep.Solve(objective, region, shares, outputs, free, lines, double.PositiveInfinity) is not var (step, cost))
        {
            return (region, shares, set.Cost);
        }

        for (var i = 0; i < free.Length; i++)
        {
            shares[free[i]] = Math.Clamp(shares[free[i]] + step[i], region.Low[free[i]], region.High[free[i]]);
        }

        return (region, shares, cost);
    }

    private double[] Slope(double[] swapped, double[] before, double[] ofMissing)
    {
        var slope = new double[swapped.Length];
        for (var k = 0; k < slope.Length; k++)
        {
            slope[k] = ((swapped[k] - before[k]) / amount) + ofMissing[k];
        }

        return slope;
    }

    private List<(Region Region, double[] Shares, double Cost)> Refine(List<(Region Region, double[] Shares, double Cost)> balanced)
    {
        var ordered = balanced.OrderBy(b => b.Cost).ThenBy(Key, StringComparer.Ordinal).ToList();
        var chosen = ordered.Where(b => Incoming(b.Shares).Length == 1).Take(Singles).Union(ordered.Take(Refined - Singles)).ToList();
        var refined = new List<(Region Region, double[] Shares, double Cost)>();
        foreach (var (region, shares, _) in chosen)
        {
            if (deadline.IsOver() && refined.Count > 0)
            {
                break;
            }

            SuccessiveProgrammes.Improve(objective, region, shares, Radius, Steps, deadline);
            refined.Add((region, shares, objective.At(shares)));
        }

        return [.. refined.OrderBy(b => b.Cost).ThenBy(Key, StringComparer.Ordinal)];
    }

    private List<Draft> Finish(List<(Region Region, double[] Shares, double Cost)> refined, int limit, LimitGuard? guard)
    {
        var drafts = new List<Draft>();
        var spare = new List<Draft>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var mains = new Dictionary<int, int>();
        foreach (var (region, shares, _) in refined)
        {
            if (drafts.Count >= limit + 1)
            {
                break;
            }

            var closed = Close(region, shares);
            var draft = Settle(closed, shares, guard);
            if (draft is null || !seen.Add(string.Join(' ', Incoming(draft.Shares))))
            {
                continue;
            }

            // At most two formulas with the same main replacement, so that the list offers a choice.
            var main = Incoming(draft.Shares).OrderByDescending(j => draft.Shares[j]).FirstOrDefault(-1);
            ((mains[main] = mains.GetValueOrDefault(main) + 1) <= 2 ? drafts : spare).Add(draft);
        }

        drafts.AddRange(spare.Take(Math.Max(0, limit - drafts.Count)));
        return [.. drafts.OrderBy(d => d.Distance).ThenBy(d => d.Cost).Take(limit)];
    }

    private Draft? Settle(Region region, double[] shares, LimitGuard? guard)
    {
        for (var attempt = 0; attempt < 3; attempt++)
        {
            var free = region.Free();
            var fixedShares = current.Select((s, j) => free.Contains(j) || missing.Contains(j) ? 0 : s).ToArray();
            var rounded = Tenths.Round(shares, region, free, 100 - fixedShares.Sum());
            var whole = fixedShares.Zip(rounded, (a, b) => a + b).ToArray();
            var cost = Tenths.Polish(objective, region, whole, free, deadline);
            if (guard?.Broken(whole) is not { Count: > 0 } broken)
            {
                return new Draft(whole, cost, objective.Distance(objective.OutputsAt([.. whole.Select(s => (double)s)])));
            }

            if (guard.Within(region, broken) is not { } narrower || !Fits(narrower, free, 100 - (double)fixedShares.Sum()))
            {
                return null;
            }

            region = narrower;
            shares = Into(region, shares, free, 100 - (double)fixedShares.Sum());
            SuccessiveProgrammes.Improve(objective, region, shares, Radius, Steps, deadline);
        }

        return null;
    }

    private static bool Fits(Region region, int[] free, double total) => free.Sum(j => region.High[j]) >= total && free.Sum(j => region.Low[j]) <= total;

    /// <summary>The nearest blend with the bounds kept: what is cut off goes to the shares with room, in their order.</summary>
    private static double[] Into(Region region, double[] shares, int[] free, double total)
    {
        double[] moved = [.. shares];
        foreach (var j in free)
        {
            moved[j] = Math.Clamp(moved[j], region.Low[j], region.High[j]);
        }

        var left = total - free.Sum(j => moved[j]);
        foreach (var j in free)
        {
            var to = Math.Clamp(moved[j] + left, region.Low[j], region.High[j]);
            left -= to - moved[j];
            moved[j] = to;
        }

        return moved;
    }

    /// <summary>Leaves traces out: their room is closed, and what they had goes to the others.</summary>
    private Region Close(Region region, double[] shares)
    {
        double[] high = [.. region.High];
        double freed = 0;
        foreach (var j in candidates.Where(j => shares[j] is > 0 and < Trace || (high[j] > region.Low[j] && shares[j] <= 0)))
        {
            freed += shares[j];
            shares[j] = high[j] = 0;
        }

        var closed = region with { High = high };
        if (closed.Free() is { Length: > 0 } free)
        {
            shares[free.MaxBy(j => shares[j])] += freed;
        }

        return closed;
    }

    private string Key((Region Region, double[] Shares, double Cost) blend) => string.Join(' ', Incoming(blend.Shares));

    private int[] Incoming(double[] shares) => [.. candidates.Where(j => shares[j] > 0)];

    private int[] Incoming(decimal[] shares) => [.. candidates.Where(j => shares[j] > 0)];
}
