using System.Collections.Frozen;
using System.Text.Json;

namespace Materia.Search;

/// <summary>The order of hits. Hits without a figure to sort by come last in either direction; equal ones stand by name, then id.</summary>
/// <param name="By">What to sort by.</param>
/// <param name="Descending">The greatest first; not for relevance, whose best always comes first.</param>
public readonly record struct SearchSort(SortKey By, bool Descending = false)
{
    private static readonly FrozenSet<SortKey> OneWay = [SortKey.Relevance];

    // The words of the ranges, so that what is asked for and what is sorted by read alike.
    private static readonly FrozenDictionary<string, SortKey> ByWord = Enum.GetValues<SortKey>().ToFrozenDictionary(Word, StringComparer.Ordinal);

    /// <summary>Everything that can be asked for, such as <c>melting</c> and <c>-melting</c>.</summary>
    public static IReadOnlyList<string> Words { get; } =
        [.. Enum.GetValues<SortKey>().SelectMany(k => OneWay.Contains(k) ? [new SearchSort(k)] : new[] { new(k), new SearchSort(k, true) }).Select(s => s.ToString())];

    /// <summary>Reads a sort such as <c>name</c> or <c>-iodine</c>; <see langword="false"/> for anything that isn't in <see cref="Words"/>.</summary>
    public static bool TryParse(string? text, out SearchSort sort)
    {
        var descending = text is ['-', ..];
        var key = SortKey.Relevance;
        var known = text is not null && ByWord.TryGetValue(descending ? text[1..] : text, out key);
        sort = new SearchSort(key, descending);
        return known && sort.IsValid;
    }

    /// <summary>The sort as <see cref="TryParse"/> reads it.</summary>
    public override string ToString() => (Descending ? "-" : "") + Word(By);

    /// <summary>True unless the worst match is asked for first.</summary>
    internal bool IsValid => !(Descending && OneWay.Contains(By));

    private static string Word(SortKey key) => JsonNamingPolicy.CamelCase.ConvertName(key.ToString());
}

/// <summary>What hits can be sorted by.</summary>
public enum SortKey
{
    /// <summary>How well the names match the text.</summary>
    Relevance,

    /// <summary>The common name, accents and case apart.</summary>
    Name,

    /// <summary>Where it melts: by the melting range, else the first figure in the order that <see cref="PropertyGroup.Melting"/> names.</summary>
    Melting,

    /// <summary>The iodine value.</summary>
    Iodine,

    /// <summary>The saponification value.</summary>
    Saponification,

    /// <summary>The density.</summary>
    Density,

    /// <summary>The viscosity.</summary>
    Viscosity,

    /// <summary>The computed solid content at 20 °C.</summary>
    SolidAt20,

    /// <summary>The computed solid content at 32 °C.</summary>
    SolidAt32,

    /// <summary>The computed clear point.</summary>
    ClearPoint,

    /// <summary>The HLB of an emulsifier.</summary>
    Hlb,

    /// <summary>The cation-exchange capacity.</summary>
    CationExchangeCapacity,

    /// <summary>The volume swollen in water.</summary>
    Swelling,

    /// <summary>The shelf life unopened.</summary>
    ShelfLife,
}
