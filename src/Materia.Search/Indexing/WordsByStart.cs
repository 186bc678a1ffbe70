namespace Materia.Search.Indexing;

/// <summary>
/// The words of a field by first letter and length, for comparing a misspelled word with those that it could be. Walking Lucene's
/// dictionary for each took some milliseconds at 30,000 names.
/// </summary>
internal sealed class WordsByStart
{
    private readonly Dictionary<(char First, int Length), string[]> words;

    /// <summary>Lists <paramref name="ofField"/>, none of which may be empty.</summary>
    public WordsByStart(IEnumerable<string> ofField) =>
        words = ofField.GroupBy(w => (w[0], w.Length)).ToDictionary(g => g.Key, g => g.ToArray());

    /// <summary>The words that begin with this letter and have this many, in ordinal order of their UTF-8.</summary>
    public ReadOnlySpan<string> Of(char first, int length) => words.GetValueOrDefault((first, length));
}
