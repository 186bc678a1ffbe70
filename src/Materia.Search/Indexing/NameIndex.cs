using Lucene.Net.Index;
using Lucene.Net.Store;
using Lucene.Net.Util;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>
/// Looks typed words up in the index of names: Lucene holds the dictionary of words and, for each, the names that carry it.
/// Words reach it as terms; there is no query syntax to break.
/// Any number of threads may read at once.
/// </summary>
internal sealed class NameIndex(RAMDirectory directory, DirectoryReader reader) : IDisposable
{
    // An empty index has no segment; any other has exactly one, see NameIndexWriter.
    private readonly TermCursors cursors = new(Segment(reader));
    private readonly FieldWords byStart = new(Segment(reader));

    /// <summary>The fields of a name's document.</summary>
    public static class Fields
    {
        /// <summary>Each word of the name, and each two neighbours written as one.</summary>
        public const string Word = "word";

        /// <summary>The whole name without spaces.</summary>
        public const string Whole = "whole";

        /// <summary>The ids of the ingredient, present and former, without hyphens; on its first name only.</summary>
        public const string Id = "id";
    }

    /// <summary>Grades the names that hold exactly this word in either spelling.</summary>
    public void MarkExact(string field, Word word, byte[] grades)
    {
        using var rented = cursors.Rent(field);
        MarkExact(rented.Cursor, word.Plain, grades);
        if (word.Spelled is { } spelled)
        {
            MarkExact(rented.Cursor, spelled, grades);
        }
    }

    /// <summary>Grades the names that hold a word beginning with this one in either spelling.</summary>
    public void MarkPrefix(string field, Word word, byte[] grades)
    {
        using var rented = cursors.Rent(field);
        if (rented.Cursor is not { } cursor)
        {
            return;
        }

        foreach (var spelling in Spellings(word))
        {
            foreach (var _ in TermsBeginningWith(cursor.Terms, new BytesRef(spelling)))
            {
                cursor.Mark(grades, Grade.Prefix);
            }
        }
    }

    /// <summary>
    /// Grades the names that hold a word within the forgiven number of typing errors of this one; the first letter must be
    /// right. Numbers are never bent: a wrong digit is another substance.
    /// </summary>
    /// <remarks>
    /// The words of one first letter and nearly the same length are few, so comparing them costs tens of microseconds; building a
    /// Levenshtein automaton takes milliseconds for a common word and half a second for a word of 200 letters, which anybody could
    /// type.
    /// </remarks>
    public void MarkNear(string field, Word word, byte[] grades)
    {
        var typed = word.Plain;
        var errors = EditDistance.Forgiven(typed.Length);
        using var rented = cursors.Rent(field);
        if (errors == 0 || word.IsNumber || rented.Cursor is not { } cursor)
        {
            return;
        }

        var words = byStart.Of(field);
        for (var length = typed.Length - errors; length <= typed.Length + errors; length++)
        {
            foreach (var near in words.Of(typed[0], length))
            {
                if (EditDistance.Between(typed, near, errors) is var distance && distance <= errors && cursor.Terms.SeekExact(new BytesRef(near)))
                {
                    cursor.Mark(grades, distance == 0 ? Grade.Exact : (byte)(Grade.OneEdit + distance - 1));
                }
            }
        }
    }

    /// <summary>True when a name holds exactly this word, or one that begins with it.</summary>
    public bool Holds(string field, Word word, bool unfinished)
    {
        using var rented = cursors.Rent(field);
        return rented.Cursor is { } cursor
            && Spellings(word).Select(s => new BytesRef(s)).Any(s => cursor.Terms.SeekExact(s) || (unfinished && TermsBeginningWith(cursor.Terms, s).Any()));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        reader.Dispose();
        directory.Dispose();
    }

    private static AtomicReader? Segment(DirectoryReader reader) => reader.Leaves.Count == 0 ? null : reader.Leaves[0].AtomicReader;

    private static IEnumerable<string> Spellings(Word word) => word.Spelled is { } spelled ? [word.Plain, spelled] : [word.Plain];

    // Walks the dictionary, which is in order; the term itself is where the enumeration stands.
    private static IEnumerable<TermsEnum> TermsBeginningWith(TermsEnum terms, BytesRef prefix)
    {
        var found = terms.SeekCeil(prefix) != TermsEnum.SeekStatus.END;
        while (found && StringHelper.StartsWith(terms.Term, prefix))
        {
            yield return terms;
            found = terms.MoveNext();
        }
    }

    private static void MarkExact(TermCursor? cursor, string spelling, byte[] grades)
    {
        if (cursor is not null && cursor.Terms.SeekExact(new BytesRef(spelling)))
        {
            cursor.Mark(grades, Grade.Exact);
        }
    }
}
