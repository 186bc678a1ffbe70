using System.Globalization;
using System.Text.RegularExpressions;

namespace Materia.Tests.Checks;

/// <summary>One published figure with its own tolerance.</summary>
internal sealed record CheckRow(string Id, string System, string Quantity, double? Temperature, string Text, Tolerance Tolerance, string Seen, string Note)
{
    public double Value => double.Parse(Text, CultureInfo.InvariantCulture);

    public bool IsMemory => Seen.StartsWith("memory", StringComparison.Ordinal);

    public bool IsRejected => Note.StartsWith("rejected", StringComparison.Ordinal);

    /// <summary>How the row is called in the list of tests; a recalled one says so.</summary>
    public string Title
    {
        get
        {
            var at = Temperature is { } t ? string.Create(CultureInfo.InvariantCulture, $" at {t} °C") : "";
            var grade = IsMemory ? "recalled, not read" : Seen.Split(' ')[0];
            return $"{Id} {Quantity} of {System}{at} ({grade})";
        }
    }
}

/// <summary>How far a computed figure may lie from a published one.</summary>
internal sealed partial record Tolerance(double Absolute, double Relative, double? Low, double? High, string Text)
{
    public static Tolerance Parse(string text)
    {
        if (RangeForm().Match(text) is { Success: true } range)
        {
            return new Tolerance(0, 0, Number(range.Groups[1]), Number(range.Groups[2]), text);
        }

        double absolute = 0;
        double relative = 0;
        foreach (Match match in Part().Matches(text))
        {
            if (match.Groups[2].Value == "%")
            {
                relative += Number(match.Groups[1]) / 100;
            }
            else
            {
                absolute += Number(match.Groups[1]);
            }
        }

        return new Tolerance(absolute, relative, null, null, text);
    }

    public bool Allows(double published, double computed) => Low is { } low && High is { } high
        ? computed >= low && computed <= high
        : Math.Abs(computed - published) <= Absolute + (Relative * Math.Abs(published));

    [GeneratedRegex(@"^range ([\d.]+)-([\d.]+)$")]
    private static partial Regex RangeForm();

    [GeneratedRegex(@"([\d.]+) (abs|%)")]
    private static partial Regex Part();

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);
}
