using System.Collections.Concurrent;
using Lucene.Net.Index;

namespace Materia.Search.Indexing;

/// <summary>The words of each field, listed in the ways that misspelled words need, each when one first asks for it.</summary>
internal sealed class FieldWords(AtomicReader? segment)
{
    private readonly ConcurrentDictionary<string, Lazy<WordsByStart>> byStart = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<WordsBySound>> bySound = new(StringComparer.Ordinal);

    /// <summary>The words of <paramref name="field"/> by their start.</summary>
    public WordsByStart ByStart(string field) => byStart.GetOrAdd(field, name => new Lazy<WordsByStart>(() => new WordsByStart(Words(name)))).Value;

    /// <summary>The words of <paramref name="field"/> by their sound.</summary>
    public WordsBySound BySound(string field) => bySound.GetOrAdd(field, name => new Lazy<WordsBySound>(() => new WordsBySound(Words(name)))).Value;

    private IEnumerable<string> Words(string field)
    {
        if (segment?.GetTerms(field)?.GetEnumerator() is { } terms)
        {
            while (terms.MoveNext())
            {
                yield return terms.Term.Utf8ToString();
            }
        }
    }
}
