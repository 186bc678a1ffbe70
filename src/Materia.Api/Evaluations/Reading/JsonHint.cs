using System.Text;

namespace Materia.Api.Evaluations.Reading;

/// <summary>Says what is likely wrong where a text stops being JSON.</summary>
internal static class JsonHint
{
    private static readonly byte[][] NotNumbers = ["NaN"u8.ToArray(), "Infinity"u8.ToArray(), "-Infinity"u8.ToArray(), "nan"u8.ToArray(), "inf"u8.ToArray()];

    /// <summary>A hint for the place given by line and byte, both from nought.</summary>
    public static string For(ReadOnlySpan<byte> utf8, long line, long place)
    {
        var at = Offset(utf8, line, place);
        var before = utf8[..at].TrimEnd(" \t\r\n"u8);
        var rest = utf8[at..];
        if (utf8.TrimStart(" \t\r\n"u8).IsEmpty)
        {
            return "The body is empty; send a JSON object.";
        }

        if (Starts(rest, NotNumbers))
        {
            return "NaN and Infinity are no numbers in JSON; give a number, or leave the member out.";
        }

        if (rest.IsEmpty)
        {
            return "The text ends too early; close the brackets and quotes that are open.";
        }

        return rest[0] switch
        {
            >= (byte)'0' and <= (byte)'9' when IsAfterDecimalComma(before) => "Decimals are written with a dot, such as 12.5; a comma ends the number.",
            (byte)'}' or (byte)']' when !before.IsEmpty && before[^1] == ',' => "Take out the comma before the closing bracket.",
            (byte)'\'' => "Names and texts stand in double quotes.",
            (byte)'/' or (byte)'#' => "JSON has no comments; take it out.",
            (byte)'"' => "A comma or a colon is missing before this quote.",
            (byte)'.' or (byte)'+' => "A number begins with a digit or a minus sign, such as 0.5.",
            _ => $"Check the commas, quotes and brackets around '{Shown(utf8, at)}'; texts stand in double quotes.",
        };
    }

    private static bool IsAfterDecimalComma(ReadOnlySpan<byte> before) =>
        before.Length > 1 && before[^1] == ',' && char.IsAsciiDigit((char)before[^2]);

    private static bool Starts(ReadOnlySpan<byte> rest, byte[][] words)
    {
        foreach (var word in words)
        {
            if (rest.StartsWith(word))
            {
                return true;
            }
        }

        return false;
    }

    private static string Shown(ReadOnlySpan<byte> utf8, int at)
    {
        // The reader stops inside a word it does not know; the whole word says more.
        while (at > 0 && char.IsAsciiLetter((char)utf8[at - 1]))
        {
            at--;
        }

        var rest = utf8[at..];
        var cut = Encoding.UTF8.GetString(rest[..Math.Min(rest.Length, 12)]);
        return new string([.. cut.TakeWhile(c => !char.IsControl(c) && c != '\uFFFD')]);
    }

    private static int Offset(ReadOnlySpan<byte> utf8, long line, long place)
    {
        var start = 0;
        for (; line > 0; line--)
        {
            var end = utf8[start..].IndexOf((byte)'\n');
            if (end < 0)
            {
                break;
            }

            start += end + 1;
        }

        return (int)Math.Clamp(start + place, 0, utf8.Length);
    }
}
