namespace Materia.Formulation.Optimising;

/// <summary>
/// The best step from a blend when its outputs are taken to be linear: min Σ cost·(what lies outside each goal) over changes of the free
/// shares that add up to nought, keep the bounds and go no further than a radius.
/// </summary>
internal static class LinearStep
{
    /// <summary>Slopes below this move nothing worth a row.</summary>
    private const double Flat = 1e-9;

    /// <summary>The step, by place in <paramref name="free"/>, and the cost that the linear model gives it; <see langword="null"/> when the bounds leave no step.</summary>
    /// <param name="objective">The goals.</param>
    /// <param name="region">The bounds.</param>
    /// <param name="x">The blend.</param>
    /// <param name="outputs">Its outputs.</param>
    /// <param name="free">The materials that may change.</param>
    /// <param name="slopes">By place in <paramref name="free"/>, the change of each output for one point more of that material.</param>
    /// <param name="radius">How far a share may go [percentage points].</param>
    /// <param name="sum">What the changes add up to [percentage points]: nought, or what <paramref name="x"/> lacks.</param>
    public static (double[] Step, double Cost)? Solve(
        Objective objective, Region region, double[] x, double[] outputs, ReadOnlySpan<int> free, double[][] slopes, double radius, double sum = 0)
    {
        using var programme = new LinearProgramme();
        var step = new int[free.Length];
        var total = new (int, double)[free.Length];
        for (var i = 0; i < free.Length; i++)
        {
            step[i] = programme.Variable(Math.Max(region.Low[free[i]] - x[free[i]], -radius), Math.Min(region.High[free[i]] - x[free[i]], radius));
            total[i] = (step[i], 1);
        }

        programme.Row(sum, sum, total);
        AddGroups(programme, region, x, free, step);
        var constant = AddGoals(programme, objective, outputs, step, slopes);
        return programme.Solve() is var (values, cost) ? (values[..free.Length], cost + constant) : null;
    }

    private static void AddGroups(LinearProgramme programme, Region region, double[] x, ReadOnlySpan<int> free, int[] step)
    {
        foreach (var group in region.Groups)
        {
            double now = 0;
            var terms = new List<(int, double)>();
            foreach (var column in group.Columns)
            {
                now += x[column];
                var place = free.IndexOf(column);
                if (place >= 0)
                {
                    terms.Add((step[place], 1));
                }
            }

            programme.Row(group.Low - now, group.High - now, terms.ToArray());
        }
    }

    private static double AddGoals(LinearProgramme programme, Objective objective, double[] outputs, int[] step, double[][] slopes)
    {
        double constant = 0;
        var terms = new (int, double)[step.Length + 2];
        foreach (var goal in objective.Goals)
        {
            var now = outputs[goal.Output];
            var flat = double.IsNaN(now);
            for (var i = 0; i < step.Length && !flat; i++)
            {
                var slope = slopes[i][goal.Output];
                flat |= double.IsNaN(slope);
                terms[i] = (step[i], slope);
            }

            if (flat || !Array.Exists(terms[..step.Length], t => Math.Abs(t.Item2) > Flat))
            {
                constant += goal.Of(now);
                continue;
            }

            terms[^2] = (programme.Variable(0, double.PositiveInfinity, goal.Cost), 1);
            terms[^1] = (programme.Variable(0, double.PositiveInfinity, goal.Cost), -1);
            programme.Row(goal.Low - now, goal.High - now, terms);
        }

        return constant;
    }
}
