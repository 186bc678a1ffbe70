using Materia.Regulation.Rollup;

namespace Materia.Regulation.Limits;

/// <summary>The largest share of one material that would keep a limit, all other materials staying as they are.</summary>
/// <param name="Ingredient">What results call the material.</param>
/// <param name="Percent">The largest share of it [%], rounded down to the fourth decimal; 0 where the others are over the limit already.</param>
public sealed record LargestPassing(string Ingredient, decimal Percent)
{
    private const int Decimals = 4;
    private const decimal Step = 0.0001m;

    /// <summary>Works it out for each contribution.</summary>
    /// <param name="contributions">What brings the substance.</param>
    /// <param name="limit">The limit, in the unit of the contributions' amounts.</param>
    /// <param name="notExcluded">What other materials may hold besides, in the same unit.</param>
    /// <param name="below">Whether the amount must stay below the limit.</param>
    internal static IReadOnlyList<LargestPassing> Of(IReadOnlyList<ExactContribution> contributions, decimal limit, decimal notExcluded, bool below)
    {
        var total = contributions.Sum(c => c.Amount.High) + notExcluded;
        return [.. contributions.Where(c => c.Share.High > 0).Select(c => new LargestPassing(c.Line.Name, Largest(limit - (total - c.Amount.High), c.Share.High, below)))];
    }

    private static decimal Largest(decimal room, decimal share, bool below)
    {
        if (room <= 0)
        {
            return 0;
        }

        var exact = Math.Min(100, room * 100 / share);
        var floor = decimal.Floor(exact * 10_000) / 10_000;
        return decimal.Round(below && floor * share / 100 >= room ? Math.Max(0, floor - Step) : floor, Decimals);
    }
}
