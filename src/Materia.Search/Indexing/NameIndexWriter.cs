using Lucene.Net.Analysis.Core;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Store;
using Lucene.Net.Util;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>Writes the names of records into an index in memory, a document for each name.</summary>
internal sealed class NameIndexWriter : IDisposable
{
    // More than any catalogue's names take, so that they are written as one segment and never merged [MB].
    private const double BufferSize = 256;

    // Only which names hold a word is ever asked: no positions, no counts, no lengths.
    private static readonly FieldType TermsOnly = new() { IsIndexed = true, IsTokenized = true, OmitNorms = true, IndexOptions = IndexOptions.DOCS_ONLY };

    private readonly WordStream words = new();
    private readonly WordStream whole = new();
    private readonly WordStream ids = new();
    private readonly bool withPairs;
    private readonly Document document;

    private NameIndexWriter(bool withPairs)
    {
        this.withPairs = withPairs;
        document =
        [
            new Field(NameIndex.Fields.Word, words, TermsOnly),
            new Field(NameIndex.Fields.Whole, whole, TermsOnly),
            new Field(NameIndex.Fields.Id, ids, TermsOnly),
        ];
    }

    /// <summary>Builds the index and the table of the names in it.</summary>
    /// <param name="records">The records, in the order of their ids.</param>
    /// <param name="withPairs">Whether two neighbouring words are found when they are typed as one; it doubles the dictionary.</param>
    public static (NameTable Table, NameIndex Index) Build(IReadOnlyList<NamedRecord> records, bool withPairs)
    {
        var directory = new RAMDirectory();

        // Words come in ready-made, so the analyzer of the settings is never asked; and merging must keep the documents in
        // the order in which they were added, because a document's number is the place of its name in the table.
        using var analyzer = new KeywordAnalyzer();
        var settings = new IndexWriterConfig(LuceneVersion.LUCENE_48, analyzer) { MergePolicy = new LogDocMergePolicy(), RAMBufferSizeMB = BufferSize };
        NameTable table;
        using (var writer = new IndexWriter(directory, settings))
        {
            using var names = new NameIndexWriter(withPairs);
            var last = -1;
            table = NameTable.Build(records, (name, wordsOfName) =>
            {
                names.Set(wordsOfName, name.Ingredient == last ? null : records[name.Ingredient]);
                last = name.Ingredient;
                writer.AddDocument(names.document);
            });
            writer.ForceMerge(1);
            writer.Commit();
        }

        return (table, new NameIndex(directory, DirectoryReader.Open(directory)));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        words.Dispose();
        whole.Dispose();
        ids.Dispose();
    }

    // The first name of a record carries its ids.
    private void Set(IReadOnlyList<Word> name, NamedRecord? firstOf)
    {
        var pairs = (withPairs ? name.Zip(name.Skip(1)) : []).Where(p => !p.First.IsNumber && !p.Second.IsNumber).Select(p => Word.Join(p.First, p.Second));
        words.Set(Spellings(name.Concat(pairs)));
        whole.Set(Spellings([Word.Join(name)]));
        ids.Set(firstOf is null ? [] : Spellings(firstOf.FormerIds.Prepend(firstOf.Id).Select(id => Word.Join(Wording.Of(id)))));
    }

    private static IEnumerable<string> Spellings(IEnumerable<Word> of) =>
        of.Where(w => w.Plain.Length > 0).SelectMany(w => w.Spelled is { } spelled ? new[] { w.Plain, spelled } : [w.Plain]);
}
