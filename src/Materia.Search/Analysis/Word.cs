namespace Materia.Search.Analysis;

/// <summary>One folded word of a name or of typed text.</summary>
/// <param name="Plain">The word with every accent dropped: <c>rizinusol</c> of <c>Rizinusöl</c>.</param>
/// <param name="Spelled">
/// The word with umlauts and Nordic letters written out, <c>rizinusoel</c>; <see langword="null"/> where that changes nothing.
/// </param>
internal readonly record struct Word(string Plain, string? Spelled = null)
{
    /// <summary>True for a word of digits, such as a registry number without its hyphens.</summary>
    public bool IsNumber => Plain is [>= '0' and <= '9', ..];

    /// <summary>The two words written as one.</summary>
    public static Word Join(Word first, Word second) =>
        new(first.Plain + second.Plain, first.Spelled is null && second.Spelled is null ? null : first.Written() + second.Written());

    /// <summary>All words written as one, the form in which whole names are compared.</summary>
    public static Word Join(IReadOnlyList<Word> words)
    {
        var plain = string.Concat(words.Select(w => w.Plain));
        return new Word(plain, words.Any(w => w.Spelled is not null) ? string.Concat(words.Select(w => w.Written())) : null);
    }

    private string Written() => Spelled ?? Plain;
}
