using System.Runtime.CompilerServices;
using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Emulsions;

/// <summary>Finds pairs of emulsifiers, and their ratio, that offer what an oil phase requires.</summary>
internal static class EmulsifierPairs
{
    private const int Most = 4;

    // With less than a tenth of one of them a pair is one emulsifier with a trace of another.
    private const double LeastShare = 0.1;

    private static readonly ConditionalWeakTable<Release, IReadOnlyList<Candidate>> Known = [];

    /// <summary>The pairs: both present first, then a present one with one of the catalogue, else two of the catalogue.</summary>
    public static IReadOnlyList<EmulsifierPair> For(double? required, IReadOnlyList<FormulaPart> emulsifiers, Release release)
    {
        if (required is not { } need)
        {
            return [];
        }

        var present = emulsifiers.OrderByDescending(e => e.Share.Typical).Select(e => Candidate.Of(e.Ingredient!)).OfType<Candidate>().DistinctBy(c => c.Id).ToList();
        var catalogue = Known.GetValue(release, static r => [.. r.Content.Ingredients.Where(i => i is { Kind: IngredientKind.Emulsifier, Parts.Count: 0 }).Select(Candidate.Of).OfType<Candidate>()]);
        var others = catalogue.Where(c => present.TrueForAll(p => p.Id != c.Id)).ToList();
        var pairs = Pairs(present, present, need, 2).Concat(Pairs(present, others, need, 1)).ToList();
        if (present.Count == 0)
        {
            pairs.AddRange(Pairs(catalogue, catalogue, need, 0));
        }

        return [.. pairs
            .OrderByDescending(p => p.Pair.Present).ThenBy(p => p.Rank).ThenBy(p => Math.Abs(p.Pair.HighPercent - 50)).ThenBy(p => p.Pair.High, StringComparer.Ordinal).ThenBy(p => p.Pair.Low, StringComparer.Ordinal)
            .DistinctBy(p => (p.Pair.High, p.Pair.Low))
            .Take(Most)
            .Select(p => p.Pair)];
    }

    private static IEnumerable<(EmulsifierPair Pair, int Rank)> Pairs(IReadOnlyList<Candidate> first, IReadOnlyList<Candidate> second, double need, int present) =>
        from a in first
        from b in second
        where a.Id != b.Id
        let high = a.Hlb > b.Hlb ? a : b
        let low = a.Hlb > b.Hlb ? b : a
        let share = HlbBlend.ShareOfHigh(need, high.Hlb, low.Hlb)
        where share is >= LeastShare and <= 1 - LeastShare
        select (new EmulsifierPair(high.Id, high.Hlb, low.Id, low.Hlb, Math.Round(100 * share.Value, 2), Math.Round(100 * (1 - share.Value), 2), present), high.Rank + low.Rank);

    private sealed record Candidate(string Id, double Hlb, int Rank)
    {
        // Pairs are reckoned of uncharged emulsifiers only: for the others the mean of HLB is no guide.
        public static Candidate? Of(Ingredient ingredient) =>
            EmulsionParts.IsDescribed(ingredient) && ingredient.Charge?.Charge is null or IonicCharge.Nonionic
            && StoredFigures.Find(ingredient, Property.Hlb) is { } figure
                ? new Candidate(ingredient.Id, (double)figure.Central(), (int)figure.Evidence)
                : null;
    }
}
