using System.Globalization;
using System.Text;
using Lucene.Net.Analysis.Miscellaneous;

namespace Materia.Search.Analysis;

/// <summary>Folds case and accents of one character at a time, in the two spellings that <see cref="Word"/> keeps.</summary>
internal sealed class Folding
{
    private const int CombiningDiaeresis = 0x308;
    private const int ArabicTatweel = 0x640;

    // A single character folds to at most four in Lucene's table.
    private readonly char[] one = new char[1];
    private readonly char[] folded = new char[4];

    /// <summary>True for marks that only decorate the letter before them, and for invisible format characters such as a soft hyphen.</summary>
    public static bool IsIgnored(Rune rune) =>
        rune.Value == ArabicTatweel
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format;

    /// <summary>The letter that a mark adds to the spelled-out form: the <c>e</c> of an umlaut that is typed as a vowel and a mark.</summary>
    public static string SpelledMark(Rune mark, string plainBefore) =>
        mark.Value == CombiningDiaeresis && plainBefore is [.., 'a' or 'o' or 'u'] ? "e" : "";

    /// <summary>The plain and the spelled-out form of one character; signs such as a fraction or a bracket may come out as signs.</summary>
    public (string Plain, string Spelled) Fold(Rune rune)
    {
        if (Rune.IsDigit(rune))
        {
            var digit = ((int)Rune.GetNumericValue(rune)).ToString(CultureInfo.InvariantCulture);
            return (digit, digit);
        }

        var lower = Rune.ToLowerInvariant(rune);
        var plain = Plain(lower);
        return (plain, lower.Value switch { 'ä' => "ae", 'ö' or 'ø' => "oe", 'ü' => "ue", 'å' => "aa", 'ç' => "s", _ => plain });
    }

    private string Plain(Rune lower)
    {
        if (lower.IsAscii || !lower.IsBmp)
        {
            return lower.ToString();
        }

        one[0] = (char)lower.Value;
        var length = ASCIIFoldingFilter.FoldToASCII(one, 0, folded, 0, 1);

        // A capital that has no lower-case form of its own, such as the dotted capital I, folds to an ASCII capital.
        return new string(folded, 0, length).ToLowerInvariant();
    }
}
