using Materia.Search.Analysis;
using Materia.Search.Indexing;

namespace Materia.Search.Querying;

/// <summary>
/// Finds the ingredients that a text names. The ways are tried in turn, a later one only when those before find nothing, so a name
/// as typed never stands among guesses:
/// <list type="number">
/// <item>as it is typed, or with shortened words written out;</item>
/// <item>with two words written as one;</item>
/// <item>the same without <see cref="Qualifiers"/>;</item>
/// <item>with typing errors forgiven, with and then without qualifiers;</item>
/// <item>with one word written as two, which for a misspelled word is the bolder guess: <c>beewax</c> is no "bee-free wax";</item>
/// <item>by sound or with another first letter, with and then without qualifiers.</item>
/// </list>
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

        if (Qualifiers.WrittenOut(query) is { } written)
        {
            query = written;
            typed = AsTyped(query);
        }

        if (typed.Ranked.Count > 0 || FirstFound(query.WithPairsJoined(IsWord), ref typed))
        {
            return typed;
        }

        var matches = new List<TextMatch> { typed };
        if (Qualifiers.Without(query) is { } bare)
        {
            var without = AsTyped(bare);
            if (without.Ranked.Count > 0 || FirstFound(bare.WithPairsJoined(IsWord), ref without))
            {
                return without with { AsTyped = false };
            }

            matches.Add(without);
        }

        return Forgiving(matches, index.MarkNear) ?? Split(matches) ?? Forgiving(matches, index.MarkAlike) ?? matches[0];
    }

    private bool IsWord(Word word, bool last) => index.Holds(word, last);

    private bool FirstFound(IEnumerable<TextQuery> queries, ref TextMatch match)
    {
        var found = queries.Select(AsTyped).FirstOrDefault(m => m.Ranked.Count > 0);
        match = found ?? match;
        return found is not null;
    }

    private TextMatch? Split(List<TextMatch> matches)
    {
        var found = matches.SelectMany(m => m.Query.WithWordsSplit(i => !m.Grades.Holds(i), IsWord)).Select(AsTyped).FirstOrDefault(m => m.Ranked.Count > 0);
        return found is null ? null : found with { AsTyped = false };
    }

    /// <summary>
    /// The first of some matches that finds anything once more words are graded: those that no name holds, and when that isn't
    /// enough all of them. All keep what was graded.
    /// </summary>
    private TextMatch? Forgiving(List<TextMatch> matches, Action<Word, byte[]> mark)
    {
        for (var m = 0; m < matches.Count; m++)
        {
            var (query, grades) = (matches[m].Query, matches[m].Grades);
            var unknown = Enumerable.Range(0, query.Words.Count).Where(i => !grades.Holds(i)).ToArray();
            foreach (var group in new[] { unknown, [.. Enumerable.Range(0, query.Words.Count).Except(unknown)] })
            {
                // A word that is like nothing rules every ingredient out, however the others are bent.
                if (group != unknown && !Array.TrueForAll(unknown, i => grades.Holds(i) || names.IsKindWord(query.Words[i])))
                {
                    break;
                }

                Array.ForEach(group, i => mark(query.Words[i], grades.Words[i]));
                matches[m] = matches[m] with { Ranked = group.Length == 0 ? [] : Rank(query, grades), AsTyped = false };
                if (matches[m].Ranked.Count > 0)
                {
                    return matches[m];
                }
            }
        }

        return null;
    }

    private TextMatch AsTyped(TextQuery query)
    {
        var grades = new Grades(new byte[names.Names.Length], new byte[query.Words.Count][]);
        index.MarkWhole(query.Whole, grades.Whole);
        for (var i = 0; i < query.Words.Count; i++)
        {
            grades.Words[i] = new byte[names.Names.Length];
            index.MarkExact(query.Words[i], grades.Words[i]);
            if (i == query.Words.Count - 1)
            {
                index.MarkPrefix(query.Words[i], grades.Words[i]);
            }
        }

        var ranked = Rank(query, grades);
        return new TextMatch(query, grades, ranked, ranked.Count > 0);
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
        foreach (var ingredient in Candidates(query, grades))
        {
            if (!MayMatch(ingredient, query, grades))
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

    /// <summary>
    /// The ingredients that may match, in order: those with a name that is the whole text, and those with a name that holds the
    /// rarest of the words. A word for a kind of material need not stand in a name, so it rules nothing out.
    /// </summary>
    private IEnumerable<int> Candidates(TextQuery query, Grades grades)
    {
        var (rarest, unmarked) = (-1, -1);
        for (var i = 0; i < grades.Words.Length; i++)
        {
            if (!names.IsKindWord(query.Words[i]) && grades.Words[i].AsSpan().Count(Grade.None) is var count && count > unmarked)
            {
                (rarest, unmarked) = (i, count);
            }
        }

        if (rarest < 0)
        {
            return Enumerable.Range(0, names.Ids.Count);
        }

        var (whole, holding) = (Marked(grades.Whole), Marked(grades.Words[rarest]));
        return whole.Length == 0 ? holding : whole.Union(holding).Order();
    }

    /// <summary>The ingredients of the names that are graded, each once.</summary>
    private int[] Marked(byte[] grades)
    {
        var marked = new List<int>();
        for (var at = grades.AsSpan().IndexOfAnyExcept(Grade.None); at >= 0;)
        {
            var ingredient = names.Names[at].Ingredient;
            marked.Add(ingredient);
            var end = names.Span(ingredient).End;
            var next = grades.AsSpan(end).IndexOfAnyExcept(Grade.None);
            at = next < 0 ? -1 : end + next;
        }

        return [.. marked];
    }

    /// <summary>
    /// False when some word neither stands in a name of the ingredient nor says of what kind it is, which most ingredients are
    /// settled by at once, and when no word stands in a name.
    /// </summary>
    private bool MayMatch(int ingredient, TextQuery query, Grades grades)
    {
        var (first, end) = names.Span(ingredient);
        var named = false;
        for (var i = 0; i < grades.Words.Length; i++)
        {
            if (grades.Words[i].AsSpan(first, end - first).ContainsAnyExcept(Grade.None))
            {
                named = true;
            }
            else if (!names.IsOfKind(ingredient, query.Words[i]))
            {
                return grades.Whole.AsSpan(first, end - first).ContainsAnyExcept(Grade.None);
            }
        }

        return named;
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

        for (var i = 0; i < best.Length; i++)
        {
            if (best[i] == Grade.None && names.IsOfKind(ingredient, query.Words[i]))
            {
                best[i] = Grade.Exact;
            }
        }

        return first == end || best.Contains(Grade.None)
            ? null
            : new RankedIngredient(ingredient, NameOrder.Across(names.Names[first], best), first);
    }
}
