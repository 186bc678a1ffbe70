using System.Collections.Concurrent;
using Lucene.Net.Index;
using Lucene.Net.Search;

namespace Materia.Search.Indexing;

/// <summary>
/// Lends out places in the dictionary of words. Making one copies the dictionary's blocks, which costs more than a search, so
/// each is used again; one is lent to one thread at a time.
/// </summary>
internal sealed class TermCursors(AtomicReader? segment, string field)
{
    private readonly ConcurrentBag<TermCursor> idle = [];

    /// <summary>Lends a cursor over the words of the field; it holds none where the index has no words.</summary>
    public Rented Rent() => idle.TryTake(out var cursor)
        ? new Rented(idle, cursor)
        : new Rented(idle, segment?.GetTerms(field)?.GetEnumerator() is { } terms ? new TermCursor(terms) : null);

    /// <summary>A cursor on loan; disposing gives it back.</summary>
    internal readonly struct Rented(ConcurrentBag<TermCursor> bag, TermCursor? cursor) : IDisposable
    {
        /// <summary>The cursor, or <see langword="null"/> where there are no words.</summary>
        public TermCursor? Cursor => cursor;

        /// <inheritdoc/>
        public void Dispose()
        {
            if (cursor is not null)
            {
                bag.Add(cursor);
            }
        }
    }
}

/// <summary>A place in the dictionary of one field, and the names that hold the word there.</summary>
internal sealed class TermCursor(TermsEnum terms)
{
    private DocsEnum? names;

    /// <summary>The place in the dictionary.</summary>
    public TermsEnum Terms => terms;

    /// <summary>Grades the names that hold the word at the place.</summary>
    public void Mark(byte[] grades, byte grade)
    {
        names = terms.Docs(liveDocs: null, reuse: names, DocsFlags.NONE);
        for (var name = names.NextDoc(); name != DocIdSetIterator.NO_MORE_DOCS; name = names.NextDoc())
        {
            Grade.Improve(ref grades[name], grade);
        }
    }
}
