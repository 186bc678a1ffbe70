using Materia.Search.Indexing;

namespace Materia.Search.Querying;

/// <summary>Says which names of a hit the text matched.</summary>
internal static class MatchedNames
{
    private const int MostNames = 3;

    /// <summary>The names that match as well as the best one; where none matches alone, the best one for each word.</summary>
    public static IReadOnlyList<MatchedName> Of(int ingredient, NameTable table, TextMatch match)
    {
        // The best few are kept in order as they are met: an ingredient has some ten names, and a page many ingredients.
        var (first, end) = table.Span(ingredient);
        Span<(long Rank, int Name)> best = stackalloc (long, int)[MostNames];
        var count = 0;
        for (var name = first; name < end; name++)
        {
            if (NameOrder.OfName(table.Names[name], name, match.Query, match.Grades) is { } rank)
            {
                count = Insert(best, count, (rank, name));
            }
        }

        if (count == 0)
        {
            return Together(first, end, table, match);
        }

        var names = new List<MatchedName>(count);
        foreach (var (rank, name) in best[..count])
        {
            if (NameOrder.TierOf(rank) == NameOrder.TierOf(best[0].Rank))
            {
                names.Add(Describe(table.Names[name], NameOrder.DegreeOf(rank)));
            }
        }

        return names;
    }

    /// <summary>Puts an entry in its place among the best, behind those of the same rank, and gives their new number.</summary>
    private static int Insert(Span<(long Rank, int Name)> best, int count, (long Rank, int Name) entry)
    {
        var place = count;
        while (place > 0 && best[place - 1].Rank > entry.Rank)
        {
            place--;
        }

        if (place == best.Length)
        {
            return count;
        }

        count = Math.Min(count + 1, best.Length);
        for (var i = count - 1; i > place; i--)
        {
            best[i] = best[i - 1];
        }

        best[place] = entry;
        return count;
    }

    private static List<MatchedName> Together(int first, int end, NameTable table, TextMatch match)
    {
        var worst = new SortedDictionary<int, byte>();
        foreach (var grades in match.Grades.Words)
        {
            // A word that only says of what kind the ingredient is stands in no name.
            if (Enumerable.Range(first, end - first).Where(n => grades[n] != Grade.None).Cast<int?>().MinBy(n => grades[n!.Value]) is { } best)
            {
                worst[best] = Math.Max(grades[best], worst.GetValueOrDefault(best));
            }
        }

        return [.. worst.Select(n => Describe(table.Names[n.Key], Degree(n.Value)))];
    }

    private static MatchDegree Degree(byte grade) =>
        grade switch { Grade.Exact => MatchDegree.Exact, Grade.Prefix => MatchDegree.Prefix, _ => MatchDegree.Fuzzy };

    private static MatchedName Describe(IndexedName name, MatchDegree how) => new(name.Text, name.Kind, name.Language, how);
}
