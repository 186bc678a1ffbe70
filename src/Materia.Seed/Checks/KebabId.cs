namespace Materia.Seed.Checks;

/// <summary>The form of ids and keys.</summary>
internal static class KebabId
{
    /// <summary>True for lower-case ASCII letters and digits in groups joined by single hyphens, such as <c>shea-butter</c>.</summary>
    public static bool IsValid(string text) =>
        text.Length > 0
        && text[0] != '-'
        && text[^1] != '-'
        && !text.Contains("--", StringComparison.Ordinal)
        && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
}
