using System.Globalization;

namespace Materia.Search;

/// <summary>A range that is asked for; both ends belong to it, and an end that is <see langword="null"/> is open.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
public readonly record struct DecimalRange(decimal? Low, decimal? High)
{
    /// <summary>True when the lower end lies above the upper one, so that nothing can lie inside.</summary>
    public bool IsReversed => Low > High;

    /// <summary>
    /// Reads <c>28..36</c>, <c>28..</c> or <c>..36</c>, numbers with a decimal point. A reversed range is read, see
    /// <see cref="IsReversed"/>; anything else, <c>..</c> among it, is not.
    /// </summary>
    public static bool TryParse(string? text, out DecimalRange range)
    {
        range = default;
        var dots = text?.IndexOf("..", StringComparison.Ordinal) ?? -1;
        if (text is null || dots < 0 || !TryParseEnd(text.AsSpan(0, dots), out var low) || !TryParseEnd(text.AsSpan(dots + 2), out var high))
        {
            return false;
        }

        range = new DecimalRange(low, high);
        return low is not null || high is not null;
    }

    /// <summary>The range as <see cref="TryParse"/> reads it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low:G29}..{High:G29}");

    /// <summary>True when a stored range and this one have a value in common.</summary>
    internal bool Overlaps(decimal? low, decimal? high) => !(low > High) && !(high < Low);

    /// <summary>True when a stored range lies inside this one; an end that is not known may lie anywhere, so it lies inside an open end only.</summary>
    internal bool Contains(decimal? low, decimal? high) => (Low is null || low >= Low) && (High is null || high <= High);

    private static bool TryParseEnd(ReadOnlySpan<char> text, out decimal? end)
    {
        end = null;
        if (text.IsEmpty)
        {
            return true;
        }

        if (!decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
        {
            return false;
        }

        end = value;
        return true;
    }
}
