using System.Globalization;
using Materia.Chemistry;

namespace Materia.Formulation.Making;

/// <summary>The wording that steps share.</summary>
internal static class Words
{
    /// <summary>Names in a row, as they stand inside a sentence.</summary>
    public static string Names(IEnumerable<PlacedLine> lines) => Written.List([.. lines.Select(l => l.Line.Name ?? Lower(l.Name))]);

    /// <summary>A temperature in whole degrees with its unit.</summary>
    public static string Celsius(double value) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(value):0} °C");

    /// <summary>A time in words.</summary>
    public static string Minutes(double minutes) => minutes switch
    {
        < 90 => string.Create(CultureInfo.InvariantCulture, $"{minutes:0} minutes"),
        < 2880 => string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:0.#} hours"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{minutes / 1440:0} days"),
    };

    /// <summary>Starts a sentence.</summary>
    public static string Upper(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    // A name in capitals, such as PEG-7 olivate, stays as it is.
    private static string Lower(string name) => name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
