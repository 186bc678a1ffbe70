using Lucene.Net.Analysis.Core;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Store;
using Lucene.Net.Util;
using Materia.Catalogue;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>Writes the names of a release's ingredients into an index in memory, a document for each name.</summary>
internal static class NameIndexWriter
{
    /// <summary>Builds the index and the table of the names in it.</summary>
    public static (NameTable Table, NameIndex Index) Build(IReadOnlyList<Ingredient> ingredients)
    {
        var directory = new RAMDirectory();

        // Words come in ready-made, so the analyzer of the settings is never asked; and merging must keep the documents in
        // the order in which they were added, because a document's number is the place of its name in the table.
        using var analyzer = new KeywordAnalyzer();
        var settings = new IndexWriterConfig(LuceneVersion.LUCENE_48, analyzer) { MergePolicy = new LogDocMergePolicy() };
        NameTable table;
        using (var writer = new IndexWriter(directory, settings))
        {
            var last = -1;
            table = NameTable.Build(ingredients, (name, words) =>
            {
                var ids = name.Ingredient == last ? [] : IdsOf(ingredients[name.Ingredient]);
                last = name.Ingredient;
                writer.AddDocument(DocumentOf(words, ids));
            });
            writer.ForceMerge(1);
            writer.Commit();
        }

        return (table, new NameIndex(directory, DirectoryReader.Open(directory)));
    }

    private static IEnumerable<string> IdsOf(Ingredient ingredient) => ingredient.FormerIds.Prepend(ingredient.Id);

    private static Document DocumentOf(IReadOnlyList<Word> words, IEnumerable<string> ids)
    {
        var document = new Document();
        var pairs = words.Zip(words.Skip(1)).Where(p => !p.First.IsNumber && !p.Second.IsNumber).Select(p => Word.Join(p.First, p.Second));
        foreach (var word in words.Concat(pairs))
        {
            Add(document, NameIndex.Fields.Word, word);
        }

        Add(document, NameIndex.Fields.Whole, Word.Join(words));
        foreach (var id in ids)
        {
            Add(document, NameIndex.Fields.Id, Word.Join(Wording.Of(id)));
        }

        return document;
    }

    private static void Add(Document document, string field, Word word)
    {
        if (word.Plain.Length == 0)
        {
            return;
        }

        document.Add(new StringField(field, word.Plain, Field.Store.NO));
        if (word.Spelled is { } spelled)
        {
            document.Add(new StringField(field, spelled, Field.Store.NO));
        }
    }
}
