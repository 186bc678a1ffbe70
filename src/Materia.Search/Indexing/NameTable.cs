using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>All names and numbers of a list of records, those of one record side by side, in the order of the records.</summary>
internal sealed class NameTable
{
    private readonly int[] firstName;

    private readonly IReadOnlyList<string>[] kindWords;
    private readonly HashSet<string> allKindWords;

    private NameTable(IReadOnlyList<NamedRecord> records, List<IndexedName> names, int[] firstName)
    {
        Ids = [.. records.Select(r => r.Id)];
        kindWords = [.. records.Select(r => r.KindWords)];
        allKindWords = kindWords.SelectMany(w => w).ToHashSet(StringComparer.Ordinal);
        Names = [.. names];
        this.firstName = firstName;
    }

    /// <summary>The ids of the records; an ordinal is a place in this list, and the list is in the order of the ids.</summary>
    public IReadOnlyList<string> Ids { get; }

    /// <summary>The names, by document number.</summary>
    public IndexedName[] Names { get; }

    /// <summary>Lists the names of <paramref name="records"/> and hands each, its words, and these written as one to <paramref name="index"/>.</summary>
    public static NameTable Build(IReadOnlyList<NamedRecord> records, Action<IndexedName, IReadOnlyList<Word>, Word> index)
    {
        var names = new List<IndexedName>();
        var firstName = new int[records.Count + 1];
        for (var ordinal = 0; ordinal < records.Count; ordinal++)
        {
            var languages = records[ordinal].Languages;
            foreach (var (text, kind, language) in records[ordinal].Names)
            {
                var words = Wording.Of(text);
                var whole = Word.Join(words);
                var name = new IndexedName(ordinal, text, kind, language, whole.Plain, languages, records[ordinal].Names.Count);
                names.Add(name);
                index(name, words, whole);
            }

            firstName[ordinal + 1] = names.Count;
        }

        return new NameTable(records, names, firstName);
    }

    /// <summary>The document numbers of a record's names: from the first up to, not including, the second.</summary>
    public (int First, int End) Span(int record) => (firstName[record], firstName[record + 1]);

    /// <summary>True when the word says of what kind some record is.</summary>
    public bool IsKindWord(Word word) => allKindWords.Contains(word.Plain);

    /// <summary>True when the word says of what kind the record is; it stands in none of its names.</summary>
    public bool IsOfKind(int record, Word word)
    {
        var words = kindWords[record];
        for (var i = 0; i < words.Count; i++)
        {
            if (string.Equals(words[i], word.Plain, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
