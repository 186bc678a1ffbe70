using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>The words of a field by how they sound, and by all letters but the first, for spellings that typing errors don't explain.</summary>
internal sealed class WordsBySound
{
    /// <summary>The fewest letters of a word that is compared by its sound.</summary>
    public const int ShortestWord = 3;

    private readonly Dictionary<string, List<(string Sound, string Word)>> bySkeleton = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> byRest = new(StringComparer.Ordinal);

    /// <summary>Lists <paramref name="words"/>; numbers and words of one or two letters are left out, since too many sound like them.</summary>
    public WordsBySound(IEnumerable<string> words)
    {
        foreach (var word in words)
        {
            if (word.Length < ShortestWord || char.IsAsciiDigit(word[0]))
            {
                continue;
            }

            foreach (var sound in SoundForm.Of(word))
            {
                Add(bySkeleton, SoundForm.Skeleton(sound), (sound, word));
            }

            Add(byRest, word[1..], word);
        }
    }

    /// <summary>The words whose consonants sound alike, each with its sound form.</summary>
    public IReadOnlyList<(string Sound, string Word)> OfSkeleton(string skeleton) => bySkeleton.GetValueOrDefault(skeleton) ?? [];

    /// <summary>The words that have these letters after their first.</summary>
    public IReadOnlyList<string> EndingWith(string rest) => byRest.GetValueOrDefault(rest) ?? [];

    private static void Add<T>(Dictionary<string, List<T>> lists, string key, T item)
    {
        if (!lists.TryGetValue(key, out var list))
        {
            lists.Add(key, list = new List<T>(1));
        }

        list.Add(item);
    }
}
