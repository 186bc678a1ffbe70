using System.Globalization;
using System.Text;

namespace Materia.Search.Analysis;

/// <summary>Cuts text into folded words, the same way for names and for typed text.</summary>
internal sealed class Wording
{
    // The shortest CAS number has five digits.
    private const int ShortestRegistryNumber = 5;

    private readonly List<Piece> pieces = [];
    private readonly StringBuilder plain = new();
    private readonly StringBuilder spelled = new();
    private readonly Folding folding = new();
    private Link link = Link.Gap;

    private Wording()
    {
    }

    private enum Link
    {
        Gap,
        Hyphen,
        None,
    }

    /// <summary>
    /// The words of <paramref name="text"/>: runs of letters and runs of digits, everything else separating. Digits joined by hyphens
    /// that are long enough to be a CAS or EC number become one word without the hyphens. Any text is allowed, unpaired surrogates
    /// included; text without letters and digits has no words.
    /// </summary>
    public static IReadOnlyList<Word> Of(string text)
    {
        var wording = new Wording();
        foreach (var rune in text.EnumerateRunes())
        {
            wording.Take(rune);
        }

        wording.Close();
        return wording.WithNumbersJoined();
    }

    private void Take(Rune rune)
    {
        // Most characters are plain letters and digits, which need no table and no string of their own.
        if (rune.IsAscii && char.IsAsciiLetterOrDigit((char)rune.Value))
        {
            TakePlain(char.ToLowerInvariant((char)rune.Value));
            return;
        }

        if (Folding.IsIgnored(rune))
        {
            spelled.Append(Folding.SpelledMark(rune, plain.ToString()));
            return;
        }

        if (!IsWordPart(rune) || IsApostropheLetter(rune))
        {
            Close();
            link = link == Link.None && IsHyphen(rune) ? Link.Hyphen : Link.Gap;
            return;
        }

        var (plainForm, spelledForm) = folding.Fold(rune);
        if (plainForm.Any(c => char.IsAscii(c) && !char.IsAsciiLetterOrDigit(c)))
        {
            // A digit in brackets, for one, comes out with its brackets.
            plainForm = spelledForm = string.Concat(plainForm.Where(char.IsAsciiLetterOrDigit));
        }

        if (plain.Length > 0 && plainForm.Length > 0 && char.IsAsciiDigit(plain[^1]) != char.IsAsciiDigit(plainForm[0]))
        {
            Close();
        }

        plain.Append(plainForm);
        spelled.Append(spelledForm);
    }

    private void TakePlain(char letterOrDigit)
    {
        if (plain.Length > 0 && char.IsAsciiDigit(plain[^1]) != char.IsAsciiDigit(letterOrDigit))
        {
            Close();
        }

        plain.Append(letterOrDigit);
        spelled.Append(letterOrDigit);
    }

    private void Close()
    {
        if (plain.Length > 0)
        {
            pieces.Add(new Piece(new Word(plain.ToString(), plain.Equals(spelled) ? null : spelled.ToString()), link));
            link = Link.None;
        }

        plain.Clear();
        spelled.Clear();
    }

    private List<Word> WithNumbersJoined()
    {
        var words = new List<Word>(pieces.Count);
        for (var start = 0; start < pieces.Count;)
        {
            var end = start + 1;
            while (end < pieces.Count && pieces[end] is { Before: Link.Hyphen, Word.IsNumber: true } && pieces[start].Word.IsNumber)
            {
                end++;
            }

            var run = pieces.GetRange(start, end - start).ConvertAll(p => p.Word);
            var touchesLetters = pieces[start].Before == Link.None || (end < pieces.Count && pieces[end].Before == Link.None);
            if (run.Count > 1 && !touchesLetters && run.Sum(w => w.Plain.Length) >= ShortestRegistryNumber)
            {
                words.Add(Word.Join(run));
            }
            else
            {
                words.AddRange(run);
            }

            start = end;
        }

        return words;
    }

    private static bool IsWordPart(Rune rune) =>
        Rune.IsLetter(rune)
        || Rune.IsDigit(rune)
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.SpacingCombiningMark or UnicodeCategory.LetterNumber or UnicodeCategory.OtherNumber;

    // U+02B9 to U+02C1 are apostrophes that Unicode counts as letters; typed text has plain apostrophes in their place.
    private static bool IsApostropheLetter(Rune rune) => rune.Value is >= 0x2B9 and <= 0x2C1;

    private static bool IsHyphen(Rune rune) => rune.Value == 0x2212 || Rune.GetUnicodeCategory(rune) == UnicodeCategory.DashPunctuation;

    private readonly record struct Piece(Word Word, Link Before);
}
