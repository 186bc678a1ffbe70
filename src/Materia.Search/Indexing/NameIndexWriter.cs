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
    private readonly bool withPairs;
    private readonly Document document;

    private NameIndexWriter(bool withPairs)
    {
        this.withPairs = withPairs;
        document = [new Field(NameIndex.WordField, words, TermsOnly)];
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
        var (wholes, ids) = (new WholeTexts(), new WholeTexts());
        using (var writer = new IndexWriter(directory, settings))
        {
            using var names = new NameIndexWriter(withPairs);
            var (number, last) = (0, -1);
            table = NameTable.Build(records, (name, words, whole) =>
            {
                names.Set(words);
                writer.AddDocument(names.document);
                wholes.Add(whole, number);
                if (name.Ingredient != last)
                {
                    // The first name of a record stands for its ids.
                    var record = records[name.Ingredient];
                    foreach (var id in record.FormerIds.Prepend(record.Id))
                    {
                        ids.Add(Word.Join(Wording.Of(id)), number);
                    }
                }

                (number, last) = (number + 1, name.Ingredient);
            });
            writer.ForceMerge(1);
            writer.Commit();
        }

        return (table, new NameIndex(directory, DirectoryReader.Open(directory), wholes, ids));
    }

    /// <inheritdoc/>
    public void Dispose() => words.Dispose();

    private void Set(IReadOnlyList<Word> name)
    {
        words.Clear();
        for (var i = 0; i < name.Count; i++)
        {
            words.Add(name[i]);
            if (withPairs && i + 1 < name.Count && !name[i].IsNumber && !name[i + 1].IsNumber)
            {
                words.Add(Word.Join(name[i], name[i + 1]));
            }
        }
    }
}
