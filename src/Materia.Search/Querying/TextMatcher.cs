using Materia.Search.Indexing;

namespace Materia.Search.Querying;

/// <summary>
/// Finds the ingredients that a text names: as it is typed, else with two words written as one, else with typing errors forgiven.
/// A later way is tried only when the one before finds nothing, so a name as typed never stands among guesses.
/// </summary>
internal sealed class TextMatcher(NameTable names, NameIndex index)
{
    /// <summary>Finds the ingredients that <paramref name="query"/> names; none for a text without words.</summary>
    public TextMatch Match(TextQuery query)
    {
        var typed = AsTyped(query);
        if (typed.Ranked.Count > 0 || query.Words.Count == 0)
        {
            return typed;
        }

        return query.WithPairsJoined((word, last) => index.Holds(NameIndex.Fields.Word, word, last))
            .Select(AsTyped)
            .FirstOrDefault(m => m.Ranked.Count > 0) ?? Nearly(typed);
    }

    private TextMatch AsTyped(TextQuery query)
    {
        var grades = new Grades(new byte[names.Names.Length], new byte[query.Words.Count][]);
        index.MarkExact(NameIndex.Fields.Whole, query.Whole, grades.Whole);
        for (var i = 0; i < query.Words.Count; i++)
        {
            grades.Words[i] = new byte[names.Names.Length];
            index.MarkExact(NameIndex.Fields.Word, query.Words[i], grades.Words[i]);
            if (i == query.Words.Count - 1)
            {
                index.MarkPrefix(NameIndex.Fields.Word, query.Words[i], grades.Words[i]);
            }
        }

        var ranked = Rank(query, grades);
        return new TextMatch(query, grades, ranked, ranked.Count > 0);
    }

    private TextMatch Nearly(TextMatch typed)
    {
        for (var i = 0; i < typed.Query.Words.Count; i++)
        {
            index.MarkNear(NameIndex.Fields.Word, typed.Query.Words[i], typed.Grades.Words[i]);
        }

        return typed with { Ranked = Rank(typed.Query, typed.Grades), AsTyped = false };
    }

    private List<RankedIngredient> Rank(TextQuery query, Grades grades)
    {
        var ranked = new List<RankedIngredient>();
        if (query.Words.Count == 0)
        {
            return ranked;
        }

        Span<byte> best = stackalloc byte[SearchRequest.MostWords];
        best = best[..grades.Words.Length];
        for (var ingredient = 0; ingredient < names.Ids.Count; ingredient++)
        {
            if (!MayMatch(ingredient, grades))
            {
                continue;
            }

            best.Clear();
            if (Best(ingredient, query, grades, best) is { } match)
            {
                ranked.Add(match);
            }
        }

        return ranked;
    }

    /// <summary>False when some word is in no name of the ingredient, which most ingredients are settled by at once.</summary>
    private bool MayMatch(int ingredient, Grades grades)
    {
        var (first, end) = names.Span(ingredient);
        foreach (var word in grades.Words)
        {
            if (!word.AsSpan(first, end - first).ContainsAnyExcept(Grade.None))
            {
                return grades.Whole.AsSpan(first, end - first).ContainsAnyExcept(Grade.None);
            }
        }

        return true;
    }

    private RankedIngredient? Best(int ingredient, TextQuery query, Grades grades, Span<byte> best)
    {
        var (first, end) = names.Span(ingredient);
        var (bestRank, bestToShow, shown) = (long.MaxValue, long.MaxValue, first);
        for (var name = first; name < end; name++)
        {
            if (NameOrder.OfName(names.Names[name], name, query, grades) is { } rank)
            {
                bestRank = Math.Min(bestRank, rank);
                if (NameOrder.ToShow(rank) is var show && show < bestToShow)
                {
                    (bestToShow, shown) = (show, name);
                }
            }

            for (var i = 0; i < best.Length; i++)
            {
                if (grades.Words[i][name] is var grade and not Grade.None)
                {
                    Grade.Improve(ref best[i], grade);
                }
            }
        }

        if (bestRank < long.MaxValue)
        {
            return new RankedIngredient(ingredient, bestRank, shown);
        }

        return first == end || best.Contains(Grade.None)
            ? null
            : new RankedIngredient(ingredient, NameOrder.Across(names.Names[first], best), first);
    }
}
