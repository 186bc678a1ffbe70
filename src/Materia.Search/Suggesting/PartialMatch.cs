using Materia.Search.Indexing;
using Materia.Search.Querying;

namespace Materia.Search.Suggesting;

/// <summary>
/// Finds ingredients that carry most but not all words of a text, such as <c>shea-butter</c> for "raw shea butter". Words count by
/// how few ingredients carry them (the logarithm of the share, as in inverse document frequency), so a butter of an unknown plant
/// doesn't bring up every butter.
/// </summary>
internal static class PartialMatch
{
    // Less than half the weight and the match is more likely chance than meaning.
    private const double LeastShare = 0.5;

    /// <summary>The first names of the ingredients as document numbers, the heaviest match first.</summary>
    public static IReadOnlyList<int> Find(Grades grades, NameTable names)
    {
        var count = names.Ids.Count;
        var carries = Enumerable.Range(0, count).Select(i => Carries(i, grades, names)).ToArray();
        var weights = Enumerable.Range(0, grades.Words.Length).Select(w => Math.Log((count + 1.0) / (1 + carries.Count(c => c[w])))).ToArray();
        var least = weights.Sum() * LeastShare;
        return [.. Enumerable.Range(0, count)
            .Select(i => (Ingredient: i, Weight: weights.Where((_, w) => carries[i][w]).Sum()))
            .Where(m => m.Weight > 0 && m.Weight >= least)
            .OrderByDescending(m => m.Weight)
            .ThenBy(m => names.Names[names.Span(m.Ingredient).First].Key.Length)
            .ThenBy(m => m.Ingredient)
            .Select(m => names.Span(m.Ingredient).First)];
    }

    private static bool[] Carries(int ingredient, Grades grades, NameTable names)
    {
        var (first, end) = names.Span(ingredient);
        return [.. grades.Words.Select(w => w.AsSpan(first, end - first).ContainsAnyExcept(Grade.None))];
    }
}
