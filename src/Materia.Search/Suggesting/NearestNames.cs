using Materia.Search.Analysis;
using Materia.Search.Indexing;
using Materia.Search.Querying;

namespace Materia.Search.Suggesting;

/// <summary>Finds the names that text which names nothing was likely meant to be.</summary>
internal sealed class NearestNames(NameTable names, NameIndex index)
{
    /// <summary>
    /// The nearest names as document numbers, one for each ingredient, the likeliest first: those of <paramref name="match"/>, then
    /// names and ids near to the text as a whole, and only when there are none of either those that hold the rarer part of its words.
    /// </summary>
    public IReadOnlyList<int> Find(TextMatch match)
    {
        var near = match.Ranked.OrderBy(r => r.Rank).Select(r => r.Name).Concat(AsAWhole(match.Query)).DistinctBy(n => names.Names[n].Ingredient).ToArray();
        return near.Length > 0 ? near : PartialMatch.Find(match.Grades, names);
    }

    private IEnumerable<int> AsAWhole(TextQuery query)
    {
        var grades = new byte[names.Names.Length];
        index.MarkNearWhole(query.Whole, grades);

        return Enumerable.Range(0, grades.Length)
            .Where(n => grades[n] != Grade.None)
            .OrderBy(n => grades[n])
            .ThenBy(n => EditDistance.Between(names.Names[n].Key, query.Whole.Plain))
            .ThenBy(n => names.Names[n].Key.Length)
            .ThenBy(n => names.Names[n].Kind)
            .ThenBy(n => n);
    }
}
