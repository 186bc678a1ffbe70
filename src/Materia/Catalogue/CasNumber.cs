namespace Materia.Catalogue;

/// <summary>The form and check digit of CAS registry numbers, such as <c>61789-91-1</c>.</summary>
public static class CasNumber
{
    /// <summary>
    /// True when <paramref name="text"/> is two to seven digits, two digits and a check digit, with hyphens, and the check
    /// digit is the sum of the other digits, each times its place counted from the right, modulo ten.
    /// </summary>
    public static bool IsValid(string? text)
    {
        if (text is null || text.Length is < 7 or > 12 || text[^2] != '-' || text[^5] != '-')
        {
            return false;
        }

        var sum = 0;
        var place = 0;
        for (var i = text.Length - 3; i >= 0; i--)
        {
            if (i == text.Length - 5)
            {
                continue;
            }

            if (!char.IsAsciiDigit(text[i]))
            {
                return false;
            }

            sum += ++place * (text[i] - '0');
        }

        return char.IsAsciiDigit(text[^1]) && text[0] != '0' && sum % 10 == text[^1] - '0';
    }
}
