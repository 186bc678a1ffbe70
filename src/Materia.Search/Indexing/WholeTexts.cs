using System.Runtime.InteropServices;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>
/// Which names are written as a whole text, and which carry an id. Nearly every one is its own, so an inverted index has nothing to gather and took
/// half of the time of building; a hash table gives the same answer.
/// </summary>
internal sealed class WholeTexts
{
    private readonly Dictionary<string, int> last = new(StringComparer.Ordinal);
    private readonly List<(int Name, int Before)> chain = [];

    /// <summary>All texts.</summary>
    public IEnumerable<string> All => last.Keys;

    /// <summary>Notes that a name is written so, in either spelling; text without letters and digits is nobody's.</summary>
    public void Add(Word text, int name)
    {
        Add(text.Plain, name);
        if (text.Spelled is { } spelled)
        {
            Add(spelled, name);
        }
    }

    /// <summary>Grades the names that are written so; <see langword="false"/> where there are none.</summary>
    public bool Mark(string text, byte[] grades, byte grade)
    {
        if (!last.TryGetValue(text, out var at))
        {
            return false;
        }

        for (; at > 0; at = chain[at - 1].Before)
        {
            Grade.Improve(ref grades[chain[at - 1].Name], grade);
        }

        return true;
    }

    private void Add(string text, int name)
    {
        if (text.Length > 0)
        {
            ref var at = ref CollectionsMarshal.GetValueRefOrAddDefault(last, text, out _);
            chain.Add((name, at));
            at = chain.Count;
        }
    }
}
