using Materia.Catalogue;
using Materia.Formulation.Optimising;
using Materia.Formulation.Substituting;

namespace Materia.Formulation.Designing;

/// <summary>
/// Searches formulas that meet targets: starts from the best linear mixture and from the best pairs, improves each with the true figures,
/// then searches again without one of the materials of what was found, so that the answers differ.
/// </summary>
internal sealed class DesignSearch
{
    private const int Starts = 5;
    private const int Steps = 10;
    private const double Radius = 15;
    private const double Trace = 0.05;
    private const double UsageCost = 0.4;

    // A point of what is held back on weighs as much as a hundredth of a step of all targets, a point of what is not favoured a tenth of that.
    private const double AvoidedCost = 0.01;
    private const double NotFavouredCost = 0.001;
    private readonly DesignCase request;
    private readonly Deadline deadline;
    private readonly Objective objective;

    public DesignSearch(DesignCase request, Deadline deadline)
    {
        this.request = request;
        this.deadline = deadline;
        Model = new FigureModel(request.Release, request.Columns, [.. request.Targets.Select(t => t.Figure)]);
        objective = new Objective(Model, Goals());
        Guard = new LimitGuard(request.Release, request.Use, request.Request.Market, request.AsOf, request.Columns);
    }

    /// <summary>The figures aimed at.</summary>
    public FigureModel Model { get; }

    /// <summary>The limits.</summary>
    public LimitGuard Guard { get; }

    /// <summary>The formulas, nearest first, no two of the same materials.</summary>
    public IReadOnlyList<Draft> Run()
    {
        var found = new Dictionary<string, Draft>(StringComparer.Ordinal);
        var starts = new DesignStarts(objective, request.Region);
        foreach (var start in starts.All(Starts))
        {
            if (deadline.IsOver() && found.Count > 0)
            {
                break;
            }

            Keep(found, Settle(request.Region, start));
        }

        // Each of the best formulas once without each of its largest materials.
        foreach (var draft in Best(found).Take(2).ToList())
        {
            foreach (var j in Present(draft.Shares).Where(j => request.Region.Low[j] <= 0).OrderByDescending(j => draft.Shares[j]).Take(3))
            {
                double[] high = [.. request.Region.High];
                high[j] = 0;
                var region = request.Region with { High = high };
                if (!(deadline.IsOver() && found.Count > 0) && ConstraintReading.IsFeasible(region))
                {
                    Keep(found, Settle(region, new DesignStarts(objective, region).Mixture()));
                }
            }
        }

        return [.. Best(found).Take(request.Limit)];
    }

    private List<Goal> Goals()
    {
        var goals = new List<Goal>();
        var weights = request.Targets.Sum(t => t.Weight);
        for (var t = 0; t < request.Targets.Count; t++)
        {
            var target = request.Targets[t];
            var cost = target.Weight / weights;
            goals.Add(new Goal(t, target.Low, target.High, cost / target.Step, cost * ReplacementScreen.MissingSteps));

            // A figure that rests on half of its mass may not pass for a whole one.
            goals.Add(new Goal(Objective.Cover(Model, t), 1, double.PositiveInfinity, cost / SubstitutionGoals.CoverStep, IsDistance: false));
        }

        for (var j = 0; j < request.Columns.Count; j++)
        {
            if (PreferenceCost(request.Columns[j].Ingredient) is > 0 and var cost)
            {
                goals.Add(new Goal(Objective.Share(Model, j), 0, request.Region.Low[j], cost, IsDistance: false));
            }

            if (UsageCeilings.Of(request.Columns[j].Ingredient, request.Use) is { } most and < 100)
            {
                goals.Add(new Goal(Objective.Share(Model, j), 0, Math.Max(most, request.Region.Low[j]), UsageCost / Math.Max(0.1, most), IsDistance: false));
            }
        }

        return goals;
    }

    // What needs hold back on costs a share of it; where they favour something, the rest costs a little. Neither is part of the distance.
    private double PreferenceCost(Ingredient ingredient)
    {
        var preferences = request.Needs.Resolved?.Preferences ?? [];
        var avoided = preferences.Any(p => !p.Favoured && p.Scope.Holds(ingredient));
        var favoured = !preferences.Any(p => p.Favoured) || preferences.Any(p => p.Favoured && p.Scope.Holds(ingredient));
        return avoided ? AvoidedCost : favoured ? 0 : NotFavouredCost;
    }

    private static void Keep(Dictionary<string, Draft> found, Draft? draft)
    {
        if (draft is not null && string.Join(' ', Present(draft.Shares)) is var key && (!found.TryGetValue(key, out var known) || draft.Cost < known.Cost))
        {
            found[key] = draft;
        }
    }

    private static IEnumerable<Draft> Best(Dictionary<string, Draft> found) =>
        found.OrderBy(p => p.Value.Cost).ThenBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Value);

    private static int[] Present(decimal[] shares) => [.. Enumerable.Range(0, shares.Length).Where(j => shares[j] > 0)];

    private Draft? Settle(Region region, double[]? start)
    {
        for (var attempt = 0; attempt < 4 && start is not null; attempt++)
        {
            var shares = start;
            SuccessiveProgrammes.Improve(objective, region, shares, Radius, Steps, deadline);
            if (DesignCounts.Bring(request, objective, ref region, ref shares, Trace) is false)
            {
                return null;
            }

            SuccessiveProgrammes.Improve(objective, region, shares, Radius, Steps, deadline);
            var free = region.Free();
            var kept = Enumerable.Range(0, shares.Length).Where(j => !free.Contains(j)).Sum(j => (decimal)region.Low[j]);
            var rounded = Tenths.Round(shares, region, free, 100 - kept);
            for (var j = 0; j < rounded.Length; j++)
            {
                rounded[j] = free.Contains(j) ? rounded[j] : (decimal)region.Low[j];
            }

            if (!Tenths.Repair(region, rounded, free))
            {
                return null;
            }

            var cost = Tenths.Polish(objective, region, rounded, free, deadline);
            if (Guard.Broken(rounded) is not { Count: > 0 } broken)
            {
                return Present(rounded).Length < request.Fewest ? null
                    : new Draft(rounded, cost, objective.Distance(objective.OutputsAt([.. rounded.Select(s => (double)s)])));
            }

            if (Guard.Within(region, broken) is not { } narrower || !ConstraintReading.IsFeasible(narrower))
            {
                return null;
            }

            region = narrower;
            start = DesignStarts.Nearest(objective, region, shares);
        }

        return null;
    }
}
