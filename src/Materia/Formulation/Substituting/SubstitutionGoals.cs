using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>
/// What a search for a replacement makes least: the distance of the figures from the original's, and, so much smaller that they decide
/// only between formulas that a user could not tell apart, kept lines moved, usual shares passed, and little in common in use.
/// </summary>
internal static class SubstitutionGoals
{
    /// <summary>Losing the figures of a twentieth of what a figure is about counts as a noticeable step.</summary>
    public const double CoverStep = 0.05;

    /// <summary>What moving a kept line by one percentage point costs, beside a distance of 1.</summary>
    private const double MoveCost = 0.003;

    /// <summary>What passing a usual share by all of itself costs.</summary>
    private const double UsageCost = 0.4;

    /// <summary>What having nothing in common in use costs.</summary>
    private const double KinshipCost = 0.02;

    /// <param name="model">The figures of blends of all columns.</param>
    /// <param name="original">The original's outputs.</param>
    /// <param name="kept">The lines that may move.</param>
    /// <param name="incoming">The columns that may come in, with what they have in common with what goes out.</param>
    /// <param name="ceilings">The usual upper share of each column.</param>
    /// <param name="amount">The share that goes out [%].</param>
    public static IReadOnlyList<Goal> Of(
        FigureModel model, double[] original, IEnumerable<int> kept, IReadOnlyDictionary<int, int> incoming, Func<int, double?> ceilings, double amount)
    {
        var goals = new List<Goal>();
        var weights = Math.Max(1e-9, model.Figures.Sum(f => f.Weight));
        for (var f = 0; f < model.Figures.Count; f++)
        {
            var figure = model.Figures[f];
            var cost = figure.Weight / weights;
            goals.Add(new Goal(f, original[f], original[f], cost / figure.Step, cost * ReplacementScreen.MissingSteps));
            goals.Add(new Goal(Objective.Cover(model, f), original[Objective.Cover(model, f)], double.PositiveInfinity, cost / CoverStep));
        }

        foreach (var line in kept)
        {
            var share = Objective.Share(model, line);
            goals.Add(new Goal(share, original[share], original[share], MoveCost, IsDistance: false));
            AddCeiling(line, original[share]);
        }

        var closest = Math.Max(1, incoming.Values.DefaultIfEmpty().Max());
        foreach (var (column, kinship) in incoming.OrderBy(p => p.Key))
        {
            if (kinship < closest)
            {
                goals.Add(new Goal(Objective.Share(model, column), 0, 0, KinshipCost * (closest - kinship) / closest / amount, IsDistance: false));
            }

            AddCeiling(column, 0);
        }

        return goals;

        void AddCeiling(int column, double present)
        {
            if (ceilings(column) is { } most and < 100)
            {
                var high = Math.Max(most, present);
                goals.Add(new Goal(Objective.Share(model, column), 0, high, UsageCost / Math.Max(0.1, high), IsDistance: false));
            }
        }
    }
}
