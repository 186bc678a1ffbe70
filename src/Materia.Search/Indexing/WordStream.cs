using Lucene.Net.Analysis;
using Lucene.Net.Analysis.TokenAttributes;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>
/// Hands ready-made words to Lucene. One stream serves every document, since setting one up costs far more than a name's words do.
/// </summary>
internal sealed class WordStream : TokenStream
{
    private readonly ICharTermAttribute term;
    private readonly List<string> words = [];
    private int next;

    /// <summary>A stream without words.</summary>
    public WordStream() => term = AddAttribute<ICharTermAttribute>();

    /// <summary>Takes the words of the document before out.</summary>
    public void Clear() => words.Clear();

    /// <summary>Adds a word of the document to come, in both its spellings.</summary>
    public void Add(Word word)
    {
        words.Add(word.Plain);
        if (word.Spelled is { } spelled)
        {
            words.Add(spelled);
        }
    }

    /// <inheritdoc/>
    public override void Reset()
    {
        base.Reset();
        next = 0;
    }

    /// <inheritdoc/>
    public override bool IncrementToken()
    {
        if (next == words.Count)
        {
            return false;
        }

        ClearAttributes();
        term.SetEmpty().Append(words[next++]);
        return true;
    }
}
