using System.Collections.Concurrent;
using System.Text.Json;

namespace Materia.Seed.Reading;

/// <summary>The JSON form of the single values that records hold.</summary>
internal static class ScalarForm
{
    private static readonly ConcurrentDictionary<Type, string[]> KnownWords = new();

    /// <summary>True when <paramref name="element"/> can be read as <paramref name="type"/>.</summary>
    public static bool Fits(JsonElement element, Type type) => element.ValueKind switch
    {
        JsonValueKind.String => type == typeof(string) || (type.IsEnum && Words(type).Contains(element.GetString()!, StringComparer.Ordinal)),
        JsonValueKind.Number => type == typeof(int) ? element.TryGetInt32(out _) : type == typeof(decimal) && element.TryGetDecimal(out _),
        JsonValueKind.True or JsonValueKind.False => type == typeof(bool),
        _ => false,
    };

    /// <summary>What a value of <paramref name="type"/> looks like.</summary>
    public static string Wanted(Type type) => type switch
    {
        { IsEnum: true } => $"write one of {string.Join(", ", Words(type))}",
        _ when type == typeof(string) => "write text in quotes",
        _ when type == typeof(bool) => "write true or false",
        _ when type == typeof(int) => "write a whole number without quotes",
        _ => "write a number without quotes, with a point for decimals",
    };

    private static string[] Words(Type type) =>
        KnownWords.GetOrAdd(type, static t => [.. Enum.GetNames(t).Select(JsonNamingPolicy.KebabCaseLower.ConvertName)]);
}
