using Materia.Catalogue;

namespace Materia.Formulation.Neighbours;

/// <summary>How far two ingredients lie apart, over the axes of the one that is asked for.</summary>
/// <param name="Distance">The root of the weighted mean of squared steps [1].</param>
/// <param name="Coverage">The weight of what both sides have a figure for, 0 to 1.</param>
internal readonly record struct Comparison(double Distance, double Coverage)
{
    /// <summary>What a figure counts that either side lacks [steps]: as a clear difference, never as agreement.</summary>
    public const double StepsOfMissing = 3;

    /// <summary>What another charge counts [steps], and its weight.</summary>
    public const double StepsOfCharge = 4;

    /// <summary>The weight of the charge beside the axes.</summary>
    public const double WeightOfCharge = 2;

    /// <summary>The share of two essential oils that must differ to be noticed [%].</summary>
    public const double StepOfConstituents = 12;

    /// <summary>The weight of the constituents beside the axes.</summary>
    public const double WeightOfConstituents = 4;

    /// <summary>Compares two ingredients; nothing is allocated.</summary>
    /// <param name="asked">The one asked for; its kind decides what is compared.</param>
    /// <param name="candidate">The other.</param>
    /// <param name="columns">The places of the axes of the asked kind.</param>
    public static Comparison Of(NeighbourVector asked, NeighbourVector candidate, int[] columns)
    {
        double sum = 0, weights = 0, known = 0;
        foreach (var column in columns)
        {
            var axis = Axes.All[column];
            var (a, b) = (asked.Values[column], candidate.Values[column]);
            var compared = !double.IsNaN(a) && !double.IsNaN(b);
            Add(axis.Weight, compared, compared ? axis.Steps(a, b) : 0);
        }

        if (IsCharged(asked.Ingredient.Kind) || asked.Ingredient.Charge is not null)
        {
            var compared = asked.Ingredient.Charge is not null && candidate.Ingredient.Charge is not null;
            Add(WeightOfCharge, compared, compared && asked.Ingredient.Charge!.Charge != candidate.Ingredient.Charge!.Charge ? StepsOfCharge : 0);
        }

        if (asked.Ingredient.Kind == IngredientKind.EssentialOil)
        {
            var compared = asked.Constituents.Count > 0 && candidate.Constituents.Count > 0;
            Add(WeightOfConstituents, compared, compared ? Math.Min(Axis.MostSteps, ConstituentDifference(asked, candidate) / StepOfConstituents) : 0);
        }

        return weights > 0 ? new(Math.Sqrt(sum / weights), known / weights) : new(StepsOfMissing, 0);

        void Add(double weight, bool compared, double steps)
        {
            weights += weight;
            known += compared ? weight : 0;
            var counted = compared ? steps : StepsOfMissing;
            sum += weight * counted * counted;
        }
    }

    /// <summary>The share of two oils that differs: half the sum of the absolute differences of their stated constituents [%].</summary>
    public static double ConstituentDifference(NeighbourVector asked, NeighbourVector candidate)
    {
        double sum = 0;
        foreach (var (key, (_, percent)) in asked.Constituents)
        {
            sum += Math.Abs(percent - (candidate.Constituents.TryGetValue(key, out var other) ? other.Percent : 0));
        }

        foreach (var (key, (_, percent)) in candidate.Constituents)
        {
            sum += asked.Constituents.ContainsKey(key) ? 0 : percent;
        }

        return Math.Min(100, sum / 2);
    }

    private static bool IsCharged(IngredientKind kind) =>
        kind is IngredientKind.Emulsifier or IngredientKind.Surfactant or IngredientKind.Conditioner;
}
