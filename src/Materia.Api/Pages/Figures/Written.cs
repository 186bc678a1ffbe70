using System.Globalization;
using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Api.Pages.Figures;

/// <summary>Writes numbers, ranges and units as people read them.</summary>
public static class Written
{
    private const int Digits = 3;

    /// <summary>A unit as it is printed, with the space before it; nothing for pure numbers.</summary>
    public static string Unit(string ucum) => ucum switch
    {
        Units.Celsius => " °C",
        Units.GramPerHundredGram => " g/100 g",
        Units.MillipascalSecond => " mPa·s",
        Units.SquareMillimetrePerSecond => " mm²/s",
        Units.PhScale or Units.One => "",
        Units.Month => " months",
        Units.Degree => "°",
        "[oz_av]" => " oz",
        "[lb_av]" => " lb",
        _ => " " + ucum,
    };

    /// <summary>A stored number with the digits that its source gives.</summary>
    public static string Number(decimal value) => value.ToString("0.############", CultureInfo.InvariantCulture).Replace("-", "−", StringComparison.Ordinal);

    /// <summary>A computed number with three significant digits.</summary>
    public static string Number(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return "0";
        }

        var places = Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return Math.Round(value, places).ToString("0.######", CultureInfo.InvariantCulture).Replace("-", "−", StringComparison.Ordinal);
    }

    /// <summary>A stored range with its unit: 28–34 °C, 31 (28–34) °C, at least 28 °C.</summary>
    public static string Range(decimal? low, decimal? typical, decimal? high, string unit) => (low, typical, high) switch
    {
        ({ } l, { } t, { } h) => $"{Number(t)} ({Span(l, h)}){Unit(unit)}",
        ({ } l, null, { } h) => $"{Span(l, h)}{Unit(unit)}",
        (null, { } t, null) => $"{Number(t)}{Unit(unit)}",
        ({ } l, { } t, null) => $"{Number(t)} (≥ {Number(l)}){Unit(unit)}",
        (null, { } t, { } h) => $"{Number(t)} (≤ {Number(h)}){Unit(unit)}",
        ({ } l, null, null) => $"≥ {Number(l)}{Unit(unit)}",
        (null, null, { } h) => $"≤ {Number(h)}{Unit(unit)}",
        _ => "",
    };

    /// <summary>A computed value with its range and unit.</summary>
    public static string Range(double value, double? low, double? high, string unit) =>
        low is { } l && high is { } h && l < h ? $"{Number(value)} ({Number(l)}–{Number(h)}){Unit(unit)}" : $"{Number(value)}{Unit(unit)}";

    /// <summary>A computed figure, or nothing when it is absent.</summary>
    public static string Of(ComputedFigure figure) => figure.Value is { } value ? Range(value, figure.Low, figure.High, figure.Unit) : "";

    /// <summary>The key of a value, such as <c>essential-oil</c>; markup cannot name a generic type.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => KebabCase<T>.Word(value);

    /// <summary>Words of an enumeration or a key with spaces in place of hyphens.</summary>
    public static string Words(string kebab) => kebab.Replace('-', ' ');

    /// <summary>A sentence or phrase with a capital at its head.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Span(decimal low, decimal high) => low == high ? Number(low) : $"{Number(low)}–{Number(high)}";
}
