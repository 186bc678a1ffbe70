using System.Collections.Frozen;
using System.Text.Json;

namespace Materia.Catalogue;

/// <summary>The kebab-case words of an enumeration, for query strings, tables and messages.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
public static class KebabCase<T>
    where T : struct, Enum
{
    private static readonly FrozenDictionary<string, T> ByWord =
        Enum.GetValues<T>().ToFrozenDictionary(v => JsonNamingPolicy.KebabCaseLower.ConvertName(v.ToString()), StringComparer.Ordinal);

    private static readonly FrozenDictionary<T, string> ByValue = ByWord.ToFrozenDictionary(p => p.Value, p => p.Key);

    /// <summary>All words, in the order in which the enumeration declares them.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Enum.GetValues<T>().Select(v => ByValue[v])];

    /// <summary>The word of <paramref name="value"/>, such as <c>essential-oil</c>.</summary>
    public static string Word(T value) => ByValue[value];

    /// <summary>Finds the value of a word; <see langword="false"/> when no value has that word.</summary>
    public static bool TryParse(string? word, out T value)
    {
        value = default;
        return word is not null && ByWord.TryGetValue(word, out value);
    }
}
