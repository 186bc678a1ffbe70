namespace Materia.Formulation.Making;

/// <summary>Reads the temperature that a note on handling states, so that the plan and the note beside it agree.</summary>
internal static class StatedTemperature
{
    private static readonly string[] BelowWords = ["below ", "below about ", "never above ", "fall to "];
    private static readonly string[] MeltingWords = ["at ", "above ", "over "];
    private static readonly string[] NoMoreWords = ["no more than "];

    /// <summary>The temperature to stay below, as in "Stir it in below 40 °C" [Cel].</summary>
    public static double? Below(string text) => After(text, BelowWords);

    /// <summary>The temperature to melt at, as in "Melt it at 60 to 70 °C" or "65 °C with the oils" [Cel].</summary>
    public static double? Melting(string text) => Number(text) ?? After(text, MeltingWords);

    /// <summary>The temperature not to pass, as in "at no more than 60 °C" [Cel].</summary>
    public static double? NoMoreThan(string text) => After(text, NoMoreWords);

    private static double? After(string text, string[] words)
    {
        var (first, found) = (int.MaxValue, (double?)null);
        foreach (var word in words)
        {
            for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
            {
                if (at < first && (at == 0 || !char.IsLetter(text[at - 1])) && Number(text.AsSpan(at + word.Length)) is { } number)
                {
                    (first, found) = (at, number);
                }
            }
        }

        return found;
    }

    // Two digits with a unit, or the first of two such numbers with "to" between.
    private static double? Number(ReadOnlySpan<char> text)
    {
        if (text.Length < 5 || !char.IsAsciiDigit(text[0]) || !char.IsAsciiDigit(text[1]))
        {
            return null;
        }

        var rest = text[2..];
        if (rest.StartsWith(" to ") && rest.Length > 6 && char.IsAsciiDigit(rest[4]) && char.IsAsciiDigit(rest[5]))
        {
            rest = rest[6..];
        }

        return rest.StartsWith(" °C") ? (10 * (text[0] - '0')) + text[1] - '0' : null;
    }
}
