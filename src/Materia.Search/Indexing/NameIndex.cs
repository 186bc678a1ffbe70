using Lucene.Net.Index;
using Lucene.Net.Store;
using Lucene.Net.Util;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>
/// Looks typed words up in the index of names: Lucene holds the dictionary of words, two neighbours written as one among them, and, for each, the
/// names that carry it. Words reach it as terms; there is no query syntax to break. Whole names and ids stand beside it.
/// Any number of threads may read at once.
/// </summary>
internal sealed class NameIndex(RAMDirectory directory, DirectoryReader reader, WholeTexts wholes, WholeTexts ids) : IDisposable
{
    /// <summary>The field of a name's document that holds its words.</summary>
    public const string WordField = "word";

    // An empty index has no segment; any other has exactly one, see NameIndexWriter.
    private readonly TermCursors cursors = new(Segment(reader), WordField);
    private readonly Lazy<WordsByStart> byStart = new(() => new WordsByStart(Words(reader)));
    private readonly Lazy<WordsBySound> bySound = new(() => new WordsBySound(Words(reader)));
    private readonly Lazy<WordsByStart> wholesByStart = new(() => new WordsByStart(wholes.All));
    private readonly Lazy<WordsByStart> idsByStart = new(() => new WordsByStart(ids.All));

    /// <summary>Grades the names that are exactly this text in either spelling.</summary>
    public void MarkWhole(Word text, byte[] grades)
    {
        wholes.Mark(text.Plain, grades, Grade.Exact);
        if (text.Spelled is { } spelled)
        {
            wholes.Mark(spelled, grades, Grade.Exact);
        }
    }

    /// <summary>Grades the names that as a whole, or by an id of the ingredient, are within the forgiven number of typing errors of this text.</summary>
    public void MarkNearWhole(Word text, byte[] grades)
    {
        MarkWhole(text, grades);
        ids.Mark(text.Plain, grades, Grade.Exact);
        if (!text.IsNumber)
        {
            Near(wholesByStart, text.Plain, (near, grade) => wholes.Mark(near, grades, grade));
            Near(idsByStart, text.Plain, (near, grade) => ids.Mark(near, grades, grade));
        }
    }

    /// <summary>Grades the names that hold exactly this word in either spelling.</summary>
    public void MarkExact(Word word, byte[] grades)
    {
        using var rented = cursors.Rent();
        MarkExact(rented.Cursor, word.Plain, grades);
        if (word.Spelled is { } spelled)
        {
            MarkExact(rented.Cursor, spelled, grades);
        }
    }

    /// <summary>Grades the names that hold a word beginning with this one in either spelling.</summary>
    public void MarkPrefix(Word word, byte[] grades)
    {
        using var rented = cursors.Rent();
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
    public void MarkNear(Word word, byte[] grades)
    {
        using var rented = cursors.Rent();
        if (!word.IsNumber && rented.Cursor is { } cursor)
        {
            Near(byStart, word.Plain, (near, grade) => Mark(cursor, near, grades, grade));
        }
    }

    /// <summary>
    /// Grades the names that hold a word that sounds like this one, or that differs from it in its first letter only: another
    /// letter, one lost or one too many. Numbers are not bent, and words of fewer than four letters must sound the same.
    /// </summary>
    public void MarkAlike(Word word, byte[] grades)
    {
        var typed = word.Plain;
        using var rented = cursors.Rent();
        if (typed.Length < WordsBySound.ShortestWord || word.IsNumber || rented.Cursor is not { } cursor)
        {
            return;
        }

        var words = bySound.Value;
        foreach (var sound in SoundForm.Of(typed))
        {
            var most = EditDistance.Forgiven(Math.Min(sound.Length, typed.Length));
            foreach (var (candidate, alike) in words.OfSkeleton(SoundForm.Skeleton(sound)))
            {
                if (EditDistance.Between(sound, candidate, most) is var distance && distance <= most)
                {
                    Mark(cursor, alike, grades, (byte)(Grade.Sound + distance));
                }
            }
        }

        if (EditDistance.Forgiven(typed.Length) == 0)
        {
            return;
        }

        // Another first letter, and none: among the words that end as this one does from its second letter, or from its first.
        foreach (var alike in words.EndingWith(typed[1..]).Concat(words.EndingWith(typed)))
        {
            Mark(cursor, alike, grades, Grade.Sound);
        }

        if (EditDistance.Forgiven(typed.Length - 1) > 0)
        {
            Mark(cursor, typed[1..], grades, Grade.Sound);
        }
    }

    /// <summary>True when a name holds exactly this word, or one that begins with it.</summary>
    public bool Holds(Word word, bool unfinished)
    {
        using var rented = cursors.Rent();
        return rented.Cursor is { } cursor
            && Spellings(word).Select(s => new BytesRef(s)).Any(s => cursor.Terms.SeekExact(s) || (unfinished && TermsBeginningWith(cursor.Terms, s).Any()));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        reader.Dispose();
        directory.Dispose();
    }

    private static void Near(Lazy<WordsByStart> among, string typed, Action<string, byte> mark)
    {
        var errors = EditDistance.Forgiven(typed.Length);
        for (var length = typed.Length - errors; errors > 0 && length <= typed.Length + errors; length++)
        {
            foreach (var near in among.Value.Of(typed[0], length))
            {
                if (EditDistance.Between(typed, near, errors) is var distance && distance <= errors)
                {
                    mark(near, distance == 0 ? Grade.Exact : (byte)(Grade.OneEdit + distance - 1));
                }
            }
        }
    }

    private static IEnumerable<string> Words(DirectoryReader reader)
    {
        if (Segment(reader)?.GetTerms(WordField)?.GetEnumerator() is { } terms)
        {
            while (terms.MoveNext())
            {
                yield return terms.Term.Utf8ToString();
            }
        }
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

    private static void Mark(TermCursor cursor, string word, byte[] grades, byte grade)
    {
        if (cursor.Terms.SeekExact(new BytesRef(word)))
        {
            cursor.Mark(grades, grade);
        }
    }

    private static void MarkExact(TermCursor? cursor, string spelling, byte[] grades)
    {
        if (cursor is not null)
        {
            Mark(cursor, spelling, grades, Grade.Exact);
        }
    }
}
