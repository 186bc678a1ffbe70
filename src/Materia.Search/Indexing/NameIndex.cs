using Lucene.Net.Index;
using Lucene.Net.Search;
using Lucene.Net.Store;
using Lucene.Net.Util;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>
/// Looks typed words up in the index of names: Lucene holds the dictionary of words and the names that carry each, and walks
/// the dictionary with Levenshtein automata for typing errors. Words reach it as terms; there is no query syntax to break.
/// Any number of threads may read at once.
/// </summary>
internal sealed class NameIndex(RAMDirectory directory, DirectoryReader reader) : IDisposable
{
    // An empty index has no segment; any other has exactly one, see NameIndexWriter.
    private readonly AtomicReader? segment = reader.Leaves.Count == 0 ? null : reader.Leaves[0].AtomicReader;

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
        if (segment?.GetTerms(field)?.GetEnumerator() is not { } terms)
        {
            return;
        }

        foreach (var spelling in Spellings(word))
        {
            if (terms.SeekExact(new BytesRef(spelling)))
            {
                Mark(terms, grades, Grade.Exact);
            }
        }
    }

    /// <summary>Grades the names that hold a word beginning with this one in either spelling.</summary>
    public void MarkPrefix(string field, Word word, byte[] grades)
    {
        if (segment?.GetTerms(field)?.GetEnumerator() is not { } terms)
        {
            return;
        }

        foreach (var prefix in Spellings(word).Select(s => new BytesRef(s)))
        {
            var found = terms.SeekCeil(prefix) != TermsEnum.SeekStatus.END;
            while (found && StringHelper.StartsWith(terms.Term, prefix))
            {
                Mark(terms, grades, Grade.Prefix);
                found = terms.MoveNext();
            }
        }
    }

    /// <summary>
    /// Grades the names that hold a word within the forgiven number of typing errors of this one; the first letter must be
    /// right. Numbers are never bent: a wrong digit is another substance.
    /// </summary>
    public void MarkNear(string field, Word word, byte[] grades)
    {
        var edits = EditDistance.Forgiven(word.Plain.Length);
        if (edits == 0 || word.IsNumber || segment?.GetTerms(field) is not { } dictionary)
        {
            return;
        }

        var near = new FuzzyTermsEnum(dictionary, new AttributeSource(), new Term(field, word.Plain), edits, 1, transpositions: true);
        while (near.MoveNext())
        {
            var distance = EditDistance.Between(word.Plain, near.Term.Utf8ToString());
            Mark(near, grades, distance == 0 ? Grade.Exact : (byte)(Grade.OneEdit + distance - 1));
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        reader.Dispose();
        directory.Dispose();
    }

    private static IEnumerable<string> Spellings(Word word) => word.Spelled is { } spelled ? [word.Plain, spelled] : [word.Plain];

    private static void Mark(TermsEnum terms, byte[] grades, byte grade)
    {
        var names = terms.Docs(liveDocs: null, reuse: null, DocsFlags.NONE);
        for (var name = names.NextDoc(); name != DocIdSetIterator.NO_MORE_DOCS; name = names.NextDoc())
        {
            Grade.Improve(ref grades[name], grade);
        }
    }
}
