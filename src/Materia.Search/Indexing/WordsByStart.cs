using Lucene.Net.Index;

namespace Materia.Search.Indexing;

/// <summary>
/// The words of a field by first letter and length, for comparing a misspelled word with those that it could be. Walking Lucene's
/// dictionary for each took some milliseconds at 30,000 names.
/// </summary>
internal sealed class WordsByStart
{
    private readonly Dictionary<(char First, int Length), string[]> words;

    private WordsByStart(Dictionary<(char, int), string[]> words) => this.words = words;

    /// <summary>Lists the words of a field; none where the index has no such field.</summary>
    public static WordsByStart Of(AtomicReader? segment, string field)
    {
        var lists = new Dictionary<(char, int), List<string>>();
        if (segment?.GetTerms(field)?.GetEnumerator() is { } terms)
        {
            while (terms.MoveNext())
            {
                var word = terms.Term.Utf8ToString();
                var key = (word[0], word.Length);
                if (!lists.TryGetValue(key, out var list))
                {
                    lists.Add(key, list = []);
                }

                list.Add(word);
            }
        }

        return new WordsByStart(lists.ToDictionary(l => l.Key, l => l.Value.ToArray()));
    }

    /// <summary>The words that begin with this letter and have this many, in ordinal order of their UTF-8.</summary>
    public ReadOnlySpan<string> Of(char first, int length) => words.GetValueOrDefault((first, length));
}
