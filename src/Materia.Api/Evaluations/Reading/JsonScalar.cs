using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Materia.Formulation.Substituting;

namespace Materia.Api.Evaluations.Reading;

/// <summary>Compares a text, number, truth value or word with the type it should become.</summary>
internal static partial class JsonScalar
{
    /// <summary>What is wrong and what to write instead; <see langword="null"/> when nothing is wrong.</summary>
    public static string? Fault(JsonElement element, Type type)
    {
        if (type == typeof(decimal))
        {
            return Number(element, element.ValueKind == JsonValueKind.Number && element.TryGetDecimal(out _), "a number, such as 12.5");
        }

        if (type == typeof(int))
        {
            return Number(element, element.ValueKind == JsonValueKind.Number && element.TryGetInt32(out _), "a whole number, such as 6");
        }

        if (type == typeof(bool))
        {
            return element.ValueKind is JsonValueKind.True or JsonValueKind.False ? null : $"true or false (without quotes) is expected here, not {Describe(element)}.";
        }

        if (type == typeof(LineChoice))
        {
            return element.ValueKind == JsonValueKind.String || (element.ValueKind == JsonValueKind.Number && element.TryGetInt32(out _))
                ? null
                : $"A line is named by its place (a whole number, from 0) or by its material (a text), not by {Describe(element)}.";
        }

        if (type.IsEnum)
        {
            return Word(element, type);
        }

        return element.ValueKind == JsonValueKind.String ? null : $"A text in double quotes is expected here, not {Describe(element)}.";
    }

    /// <summary>A value as a message names it.</summary>
    public static string Describe(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => $"the text \"{Shorten(element.GetString()!)}\"",
        JsonValueKind.Null => "null",
        _ => Shorten(element.GetRawText()),
    };

    private static string? Number(JsonElement element, bool fits, string expected)
    {
        if (fits)
        {
            return null;
        }

        if (element.ValueKind == JsonValueKind.Number)
        {
            return $"{Shorten(element.GetRawText())} is not a number that fits here; {expected}, is expected.";
        }

        if (element.ValueKind != JsonValueKind.String)
        {
            return $"{char.ToUpperInvariant(expected[0])}{expected[1..]}, is expected here, not {Describe(element)}.";
        }

        var text = element.GetString()!.Trim();
        if (DecimalComma().IsMatch(text))
        {
            return $"Write this number with a dot and without quotes: {text.Replace(',', '.')}.";
        }

        return decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            ? $"Write this number without quotes: {Shorten(text)}."
            : $"\"{Shorten(text)}\" is not a number; {expected}, is expected here, without quotes.";
    }

    private static string? Word(JsonElement element, Type type)
    {
        var words = Enum.GetValues(type).Cast<object>().Select(v => JsonNamingPolicy.KebabCaseLower.ConvertName(v.ToString()!)).ToList();
        return element.ValueKind == JsonValueKind.String && words.Contains(element.GetString()!)
            ? null
            : $"One of {string.Join(", ", words.Select(w => $"\"{w}\""))} is expected here, not {Describe(element)}.";
    }

    private static string Shorten(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "...");

    [GeneratedRegex(@"^-?\d{1,15},\d{1,15}$")]
    private static partial Regex DecimalComma();
}
