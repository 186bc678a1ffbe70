using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>An ingredient whose fatty-acid profile lies near a measured one.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Distance">The distance of the two profiles in percentage points; see <see cref="Nearest"/>.</param>
public sealed record ProfileMatch(Ingredient Ingredient, double Distance)
{
    /// <summary>
    /// Ranks the release's butters, oils and other fats that have a sample profile by their distance to a measured one, nearest first:
    /// d = √Σ(x − y)², over chain totals (isomers added up), in percentage points. Both profiles are brought to 100 % first. An analysis that
    /// names only some acids is compared on all: an acid that one side lacks counts as nought there.
    /// </summary>
    /// <param name="measured">Symbols of acids and their shares, not negative [%]; a symbol without a position is a total.</param>
    /// <param name="release">The release to compare with.</param>
    /// <param name="limit">How many to give at most.</param>
    /// <exception cref="ArgumentException">A symbol is unknown, a share is negative or not finite, or all are nought.</exception>
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
            chains[chain] = chains.GetValueOrDefault(chain) + percent;
            sum += percent;
        }

        if (!(sum > 0))
        {
            throw new ArgumentException("At least one acid must have a share above nought.", nameof(measured));
        }

        foreach (var chain in chains.Keys.ToArray())
        {
            chains[chain] *= 100 / sum;
        }

        return chains;
    }

    private static bool IsBareChain(string symbol)
    {
        var colon = symbol.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && colon < symbol.Length - 1 && symbol.Where((_, i) => i != colon).All(char.IsAsciiDigit);
    }

    private static double DistanceTo(Dictionary<string, double> wanted, AcidShares shares)
    {
        double squares = 0;
        double met = 0;
        foreach (var (chain, share) in shares.Chains)
        {
            var x = wanted.GetValueOrDefault(chain);
            met += x * x;
            squares += (x - share.Value) * (x - share.Value);
        }

        double all = 0;
        foreach (var x in wanted.Values)
        {
            all += x * x;
        }

        return Math.Sqrt(squares + Math.Max(0, all - met));
    }
}
