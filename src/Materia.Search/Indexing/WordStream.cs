using Lucene.Net.Analysis;
using Lucene.Net.Analysis.TokenAttributes;

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

    /// <summary>Sets the words of the document to come; none may be empty.</summary>
    public void Set(IEnumerable<string> ofDocument)
    {
        words.Clear();
        words.AddRange(ofDocument);
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
