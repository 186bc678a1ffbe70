using System.Collections.Concurrent;
using Lucene.Net.Index;

namespace Materia.Search.Indexing;

/// <summary>The words of each field by their start, listed when a misspelled word first asks for them.</summary>
internal sealed class FieldWords(AtomicReader? segment)
{
    private readonly ConcurrentDictionary<string, Lazy<WordsByStart>> fields = new(StringComparer.Ordinal);

    /// <summary>The words of <paramref name="field"/>.</summary>
    public WordsByStart Of(string field) => fields.GetOrAdd(field, name => new Lazy<WordsByStart>(() => WordsByStart.Of(segment, name))).Value;
}
