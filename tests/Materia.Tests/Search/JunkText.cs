using CsCheck;

namespace Materia.Tests.Search;

/// <summary>Text as nobody should type it: query syntax, control characters, unpaired surrogates, any of it in any order.</summary>
internal static class JunkText
{
    private static readonly string[] Pieces =
    [
        "shea", "OIL", "karité", "61789-91-1", "AND", "OR", "NOT", "name:", "+", "-", "&&", "||", "!", "(", ")", "{", "}", "[a TO b]", "^9", "\"", "~", "~2",
        "*", "?", ":", "\\", "/.*/", "\0", "\u001f", "\uffff", "\ufffe", "\ud800", "\udc00", "\ud83d\ude00", "\u202e", "\u0308", "\u200d", "ﬃ", "½", "⑴", "İ", "ß", "नमस्ते", "乳木果", " ", "\n",
    ];

    /// <summary>Short texts of such pieces, and texts of any UTF-16 code units.</summary>
    public static Gen<string> Any { get; } = Gen.OneOf(
        Gen.OneOf(Pieces).Array[0, 14].Select(string.Concat),
        Gen.OneOf(Pieces).Array[0, 14].Select(p => string.Join(' ', p)),
        Gen.Int[0, 0xffff].Select(u => (char)u).Array[0, 300].Select(c => new string(c)));
}
