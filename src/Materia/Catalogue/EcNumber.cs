namespace Materia.Catalogue;

/// <summary>The form and check digit of EC numbers, such as <c>232-293-8</c>.</summary>
public static class EcNumber
{
    /// <summary>
    /// True when <paramref name="text"/> has the form <c>ddd-ddd-d</c> and its last digit is the sum of the first six, each
    /// times its place counted from the left, modulo eleven. Numbers whose remainder is ten were never given out.
    /// </summary>
    public static bool IsValid(string? text)
    {
        if (text is not { Length: 9 } || text[3] != '-' || text[7] != '-')
        {
            return false;
        }

        var sum = 0;
        var place = 0;
        for (var i = 0; i < 7; i++)
        {
            if (i == 3)
            {
                continue;
            }

            if (!char.IsAsciiDigit(text[i]))
            {
                return false;
            }

            sum += ++place * (text[i] - '0');
        }

        return char.IsAsciiDigit(text[8]) && sum % 11 == text[8] - '0';
    }
}
