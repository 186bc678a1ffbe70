using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>All names and numbers of a list of records, those of one record side by side, in the order of the records.</summary>
internal sealed class NameTable
{
    private readonly int[] firstName;

    private NameTable(IReadOnlyList<string> ids, List<IndexedName> names, int[] firstName)
    {
        Ids = ids;
        Names = [.. names];
        this.firstName = firstName;
    }

    /// <summary>The ids of the records; an ordinal is a place in this list, and the list is in the order of the ids.</summary>
    public IReadOnlyList<string> Ids { get; }

    /// <summary>The names, by document number.</summary>
    public IndexedName[] Names { get; }

    /// <summary>Lists the names of <paramref name="records"/> and hands each with its words to <paramref name="index"/>.</summary>
    public static NameTable Build(IReadOnlyList<NamedRecord> records, Action<IndexedName, IReadOnlyList<Word>> index)
    {
        var names = new List<IndexedName>();
        var firstName = new int[records.Count + 1];
        for (var ordinal = 0; ordinal < records.Count; ordinal++)
        {
            foreach (var (text, kind, language) in records[ordinal].Names)
            {
                var words = Wording.Of(text);
                var name = new IndexedName(ordinal, text, kind, language, Word.Join(words).Plain);
                names.Add(name);
                index(name, words);
            }

            firstName[ordinal + 1] = names.Count;
        }

        return new NameTable([.. records.Select(r => r.Id)], names, firstName);
    }

    /// <summary>The document numbers of a record's names: from the first up to, not including, the second.</summary>
    public (int First, int End) Span(int record) => (firstName[record], firstName[record + 1]);
}
