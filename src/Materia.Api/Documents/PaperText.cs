using System.Text;

namespace Materia.Api.Documents;

/// <summary>Texts of makers made fit for documents.</summary>
internal static class PaperText
{
    /// <summary>The text on one line, without what documents cannot hold: control characters and halves of characters.</summary>
    public static string OneLine(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            clean.Append(Rune.IsControl(rune) || rune.Value is 0xFFFE or 0xFFFF ? " " : rune.ToString());
        }

        return string.Join(' ', clean.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>A file's name from a title: small letters, digits and hyphens of ASCII only.</summary>
    public static string Slug(string? title)
    {
        var slug = new StringBuilder();
        foreach (var c in (title ?? "").Normalize(NormalizationForm.FormD))
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                slug.Append(char.ToLowerInvariant(c));
            }
            else if (slug.Length > 0 && slug[^1] != '-' && !char.IsSurrogate(c) && char.GetUnicodeCategory(c) != System.Globalization.UnicodeCategory.NonSpacingMark)
            {
                slug.Append('-');
            }
        }

        var name = slug.ToString().Trim('-');
        return name.Length == 0 ? "formula" : name[..Math.Min(name.Length, 60)].TrimEnd('-');
    }
}
