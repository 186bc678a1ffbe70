using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>An ingredient whose fatty-acid profile lies near a measured one.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Distance">The distance of the two profiles, 0 for the same, up to 1 for nothing in common [1]; see <see cref="Nearest"/>.</param>
public sealed record ProfileMatch(Ingredient Ingredient, double Distance)
{
    /// <summary>Measured shares may add up to a little over 100 % by rounding, not to more than this [%].</summary>
    private const double LargestSum = 105;

    /// <summary>
    /// Ranks the release's butters, oils and other fats that have a sample profile by their distance to a measured one, nearest first:
    /// d = √(Σ(√x − √y)²/2), the Hellinger distance, over the chain totals (isomers added up) that the measurement names, x and y as shares
    /// from 0 to 1. Square roots let a point weigh more where an acid is scarce, as the scatter of analyses does; an acid that the
    /// measurement does not name is not known, and is not compared. Method <c>profile-distance</c>.
    /// </summary>
    /// <param name="measured">Symbols of acids and their shares of all acids, not negative, together at most 105 [%]; a symbol without a position is a total. An acid looked for and not found is given as nought.</param>
    /// <param name="release">The release to compare with.</param>
    /// <param name="limit">How many to give at most.</param>
    /// <exception cref="ArgumentException">A symbol is unknown, a share is negative or not finite, or they add up to nought or to more than 105 %.</exception>
    public static IReadOnlyList<ProfileMatch> Nearest(IReadOnlyDictionary<string, double> measured, Release release, int limit)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(release);
        ArgumentOutOfRangeException.ThrowIfNegative(limit);
        var wanted = Chains(measured, release);
        var index = MaterialIndex.For(release);
        var matches = new List<ProfileMatch>();
        foreach (var ingredient in release.Content.Ingredients)
        {
            var material = index.Find(ingredient);
            if (material.BearsFattyAcids && material.Shares is { } shares)
            {
                matches.Add(new ProfileMatch(ingredient, DistanceTo(wanted, shares)));
            }
        }

        matches.Sort((a, b) => a.Distance != b.Distance
            ? a.Distance.CompareTo(b.Distance)
            : string.CompareOrdinal(a.Ingredient.Id, b.Ingredient.Id));
        return matches.Count > limit ? matches.GetRange(0, limit) : matches;
    }

    private static Dictionary<string, double> Chains(IReadOnlyDictionary<string, double> measured, Release release)
    {
        var chains = new Dictionary<string, double>(StringComparer.Ordinal);
        double sum = 0;
        foreach (var (symbol, percent) in measured)
        {
            if (!double.IsFinite(percent) || percent < 0)
            {
                throw new ArgumentException($"The share of {symbol} must be a finite number that is not negative.", nameof(measured));
            }

            // A bare chain such as 18:1 is its own total, whether or not the table lists it.
            var acid = release.FindFattyAcid(symbol);
            if (acid is null && !IsBareChain(symbol))
            {
                throw new ArgumentException($"The fatty-acid table does not hold {symbol}.", nameof(measured));
            }

            var chain = acid is null ? symbol : AcidTraits.Chain(acid);
            chains[chain] = chains.GetValueOrDefault(chain) + (percent / 100);
            sum += percent;
        }

        return sum is > 0 and <= LargestSum
            ? chains
            : throw new ArgumentException($"The shares must add up to more than 0 and at most {Written.Number(LargestSum)} %; they add up to {Written.Number(sum)} %.", nameof(measured));
    }

    private static bool IsBareChain(string symbol)
    {
        var colon = symbol.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && colon < symbol.Length - 1 && symbol.Where((_, i) => i != colon).All(char.IsAsciiDigit);
    }

    private static double DistanceTo(Dictionary<string, double> wanted, AcidShares shares)
    {
        double squares = 0;
        foreach (var (chain, x) in wanted)
        {
            double y = 0;
            foreach (var (known, share) in shares.Chains)
            {
                if (known == chain)
                {
                    y = share.Value / 100;
                    break;
                }
            }

            var difference = Math.Sqrt(x) - Math.Sqrt(y);
            squares += difference * difference;
        }

        return Math.Sqrt(squares / 2);
    }
}
