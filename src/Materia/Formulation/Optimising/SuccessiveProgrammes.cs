namespace Materia.Formulation.Optimising;

/// <summary>
/// Improves a blend with the true figures: at each blend the outputs are taken to be linear (<see cref="LinearStep"/>), the step is tried
/// with the true melting model, kept when it is better, and the radius widened or narrowed by how well the linear model foretold it.
/// </summary>
internal static class SuccessiveProgrammes
{
    /// <summary>A quarter point: far above what the equilibrium's tolerance blurs, small beside the curvature of solid content.</summary>
    private const double Difference = 0.25;

    private const double LeastRadius = 0.05;
    private const double LeastGain = 1e-4;

    /// <summary>Improves <paramref name="x"/> in place and gives its cost.</summary>
    /// <param name="objective">What is made least.</param>
    /// <param name="region">What is allowed; <paramref name="x"/> lies in it.</param>
    /// <param name="x">The blend [%].</param>
    /// <param name="radius">How far a share may go in the first step [percentage points].</param>
    /// <param name="steps">The most steps.</param>
    /// <param name="deadline">When to stop.</param>
    public static double Improve(Objective objective, Region region, double[] x, double radius, int steps, Deadline deadline)
    {
        var free = region.Free();
        var outputs = objective.OutputsAt(x);
        var cost = objective.Of(outputs);
        double[][]? slopes = null;
        for (var i = 0; i < steps && radius > LeastRadius && cost > LeastGain && !deadline.IsOver(); i++)
        {
            slopes ??= Slopes(objective, x, outputs, free);
            if (LinearStep.Solve(objective, region, x, outputs, free, slopes, radius) is not var (step, foretold) || cost - foretold < LeastGain)
            {
                break;
            }

            double[] tried = [.. x];
            for (var k = 0; k < free.Length; k++)
            {
                tried[free[k]] = Math.Clamp(tried[free[k]] + step[k], region.Low[free[k]], region.High[free[k]]);
            }

            var there = objective.OutputsAt(tried);
            var found = objective.Of(there);
            var kept = (cost - found) / (cost - foretold);
            radius = kept < 0.25 ? radius / 3 : kept > 0.75 ? radius * 2 : radius;
            if (found < cost)
            {
                tried.CopyTo(x, 0);
                (outputs, cost, slopes) = (there, found, null);
            }
        }

        return cost;
    }

    /// <summary>The change of each output for one point more of each free material, by forward differences.</summary>
    public static double[][] Slopes(Objective objective, double[] x, double[] outputs, ReadOnlySpan<int> free)
    {
        var slopes = new double[free.Length][];
        for (var i = 0; i < free.Length; i++)
        {
            var before = x[free[i]];
            x[free[i]] = before + Difference;
            var there = objective.OutputsAt(x);
            x[free[i]] = before;
            for (var k = 0; k < there.Length; k++)
            {
                there[k] = (there[k] - outputs[k]) / Difference;
            }

            slopes[i] = there;
        }

        return slopes;
    }
}
