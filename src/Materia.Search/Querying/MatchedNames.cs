using Materia.Search.Indexing;

namespace Materia.Search.Querying;

/// <summary>Says which names of a hit the text matched.</summary>
internal static class MatchedNames
{
    private const int MostNames = 3;

    /// <summary>The names that match as well as the best one; where none matches alone, the best one for each word.</summary>
    public static IReadOnlyList<MatchedName> Of(int ingredient, NameTable table, TextMatch match)
    {
        var (first, end) = table.Span(ingredient);
        var alone = Enumerable.Range(first, end - first)
            .Select(name => (Name: table.Names[name], Rank: NameOrder.OfName(table.Names[name], name, match.Query, match.Grades)))
            .Where(n => n.Rank is not null)
            .OrderBy(n => n.Rank)
            .ToArray();
        return alone.Length == 0
            ? Together(first, end, table, match)
            : [.. alone
                .TakeWhile(n => NameOrder.TierOf(n.Rank!.Value) == NameOrder.TierOf(alone[0].Rank!.Value))
                .Take(MostNames)
                .Select(n => Describe(n.Name, NameOrder.DegreeOf(n.Rank!.Value)))];
    }

    private static List<MatchedName> Together(int first, int end, NameTable table, TextMatch match)
    {
        var worst = new SortedDictionary<int, byte>();
        foreach (var grades in match.Grades.Words)
        {
            var best = Enumerable.Range(first, end - first).Where(n => grades[n] != Grade.None).MinBy(n => grades[n]);
            worst[best] = Math.Max(grades[best], worst.GetValueOrDefault(best));
        }

        return [.. worst.Select(n => Describe(table.Names[n.Key], Degree(n.Value)))];
    }

    private static MatchDegree Degree(byte grade) =>
        grade switch { Grade.Exact => MatchDegree.Exact, Grade.Prefix => MatchDegree.Prefix, _ => MatchDegree.Fuzzy };

    private static MatchedName Describe(IndexedName name, MatchDegree how) => new(name.Text, name.Kind, name.Language, how);
}
