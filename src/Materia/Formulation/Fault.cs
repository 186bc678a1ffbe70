using System.Globalization;

namespace Materia.Formulation;

/// <summary>The wording that fault messages share.</summary>
internal static class Fault
{
    /// <summary>The longest title or name that is taken [characters].</summary>
    public const int LongestText = 200;

    /// <summary>A number as it stands in JSON, without the noughts that end a fraction.</summary>
    public static string Text(decimal value) => value.ToString("0.############################", CultureInfo.InvariantCulture);

    /// <summary>Text from outside, cut so that it does not flood a message.</summary>
    public static string Shorten(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "...");

    /// <summary>Words in quotation marks with commas between.</summary>
    public static string Words(IEnumerable<string> words) => string.Join(", ", words.Select(w => $"\"{w}\""));
}
