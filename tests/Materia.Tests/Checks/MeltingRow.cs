using System.Globalization;
using System.Text.RegularExpressions;

namespace Materia.Tests.Checks;

/// <summary>One printed figure on melting, with its role: calibration, check or comparison.</summary>
internal sealed partial record MeltingRow(
    string Id, string System, string Quantity, double? Temperature, string Text, string Unit, double? Tolerance, string Source, string Seen, string Role)
{
    public bool IsCheck => Role == "check";

    public bool IsCalibration => Role == "calibration";

    /// <summary>Read, secondary or memory; a remark in brackets is left out.</summary>
    public string Grade => Seen.Split(' ')[0];

    /// <summary>The printed figure, or the ends of a printed range; <see langword="null"/> for words.</summary>
    public (double Low, double High)? Printed => Number().Match(Text) is { Success: true } m
        ? (Parse(m.Groups[1].Value), Parse((m.Groups[2].Success ? m.Groups[2] : m.Groups[1]).Value))
        : null;

    /// <summary>The printed figure where it is one end of a range that two rows give: nothing is asked of the other side.</summary>
    public bool IsLowerEnd => Quantity.EndsWith(" low", StringComparison.Ordinal) || Quantity.EndsWith(" min", StringComparison.Ordinal);

    /// <summary>As <see cref="IsLowerEnd"/>, for the upper end.</summary>
    public bool IsUpperEnd => Quantity.EndsWith(" high", StringComparison.Ordinal) || Quantity.EndsWith(" max", StringComparison.Ordinal);

    /// <summary>How the row is called in the list of tests.</summary>
    public string Title
    {
        get
        {
            var at = Temperature is { } t ? string.Create(CultureInfo.InvariantCulture, $" at {t} °C") : "";
            return $"{Id} {Quantity} of {System}{at} ({(Grade == "memory" ? "recalled, not read" : Grade)}; {Role})";
        }
    }

    /// <summary>How far <paramref name="computed"/> lies outside what is printed; nought inside a printed range.</summary>
    public double Distance(double computed)
    {
        var (low, high) = Printed!.Value;
        var under = IsUpperEnd ? 0 : low - computed;
        var over = IsLowerEnd ? 0 : computed - high;
        return Math.Max(0, Math.Max(under, over));
    }

    /// <summary>Whether <paramref name="computed"/> lies within the row's own tolerance.</summary>
    public bool Allows(double computed) => Distance(computed) <= Tolerance!.Value;

    [GeneratedRegex(@"^(-?[\d.]+)(?:-([\d.]+))?$")]
    private static partial Regex Number();

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
