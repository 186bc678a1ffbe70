using System.Collections.Frozen;
using Materia.Search.Analysis;

namespace Materia.Search.Querying;

/// <summary>Typed text as words to look up.</summary>
/// <param name="Words">The words.</param>
/// <param name="Whole">All words written as one.</param>
internal sealed record TextQuery(IReadOnlyList<Word> Words, Word Whole)
{
    // What people write before a registry number; the number says it all.
    private static readonly FrozenSet<string> RegistryLabels = ["cas", "ec", "einecs"];

    // Two letters are a word of some name nearly everywhere.
    private const int ShortestPart = 3;

    /// <summary>Folds typed text; what goes beyond the limits of <see cref="SearchRequest"/> is cut off.</summary>
    public static TextQuery Of(string text)
    {
        var words = AllWords(text.Length <= SearchRequest.LongestText ? text : text[..SearchRequest.LongestText]);
        return Of([.. words.Take(SearchRequest.MostWords)]);
    }

    /// <summary>The text that these words make.</summary>
    public static TextQuery Of(IReadOnlyList<Word> words) => new(words, Word.Join(words));

    /// <summary>The words of typed text, without the label of a registry number.</summary>
    public static IReadOnlyList<Word> AllWords(string text)
    {
        var words = Wording.Of(text);
        return [.. words.Where((w, i) => !(RegistryLabels.Contains(w.Plain) && i + 1 < words.Count && words[i + 1].IsNumber))];
    }

    /// <summary>The same text with two neighbouring words written as one, <c>rose hip oil</c> as <c>rosehip oil</c>, for each pair that makes a word.</summary>
    /// <param name="isWord">Whether a word is known; told whether it comes last and may be unfinished.</param>
    public IEnumerable<TextQuery> WithPairsJoined(Func<Word, bool, bool> isWord)
    {
        for (var i = 0; i + 1 < Words.Count; i++)
        {
            var joined = Word.Join(Words[i], Words[i + 1]);
            if (isWord(joined, i + 2 == Words.Count))
            {
                yield return this with { Words = [.. Words.Take(i), joined, .. Words.Skip(i + 2)] };
            }
        }
    }

    /// <summary>The same text with one word written as two, <c>karitebutter</c> as <c>karite butter</c>, for each place at which it falls into two words.</summary>
    /// <param name="mayFall">Whether the word at a place may be split.</param>
    /// <param name="isWord">Whether a word is known; told whether it comes last and may be unfinished.</param>
    public IEnumerable<TextQuery> WithWordsSplit(Func<int, bool> mayFall, Func<Word, bool, bool> isWord)
    {
        for (var i = 0; i < Words.Count && Words.Count < SearchRequest.MostWords; i++)
        {
            var word = Words[i].Plain;
            for (var at = ShortestPart; at <= word.Length - ShortestPart && !Words[i].IsNumber && mayFall(i); at++)
            {
                var (head, tail) = (new Word(word[..at]), new Word(word[at..]));
                if (isWord(head, false) && isWord(tail, false))
                {
                    yield return this with { Words = [.. Words.Take(i), head, tail, .. Words.Skip(i + 1)] };
                }
            }
        }
    }
}
