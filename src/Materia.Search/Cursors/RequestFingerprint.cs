using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Materia.Catalogue;

namespace Materia.Search.Cursors;

/// <summary>Tells requests apart by what they find and in which order; the page asked for and its size play no part.</summary>
internal static class RequestFingerprint
{
    /// <summary>The number of bytes.</summary>
    public const int Length = 8;

    /// <summary>The fingerprint of <paramref name="request"/>; lists that hold the same values in another order give the same.</summary>
    public static byte[] Of(SearchRequest request)
    {
        var text = new StringBuilder();
        Add(text, "text", [request.Text ?? ""]);
        Add(text, "kind", request.Kinds.Select(KebabCase<IngredientKind>.Word));
        Add(text, "function", request.Functions);
        Add(text, "origin", request.Origins.Select(KebabCase<OriginKind>.Word));
        Add(text, "charge", request.Charges.Select(KebabCase<IonicCharge>.Word));
        Add(text, "group", request.Groups);
        Add(text, "property", request.Properties.Select(p => $"{p.Key.Name()}={p.Value}"));
        Add(text, "acid", request.Acids.Select(a => $"{a.Key}={a.Value}"));
        Add(text, "match", [request.RangeMatch.ToString()]);
        Add(text, "sort", [request.Sort.ToString()]);

        // UTF-16 keeps unpaired surrogates apart; UTF-8 would write the same mark for each.
        return SHA256.HashData(Encoding.Unicode.GetBytes(text.ToString()))[..Length];
    }

    // Lengths go before values, so that no value can pass for the end of one and the start of another.
    private static void Add(StringBuilder text, string member, IEnumerable<string> values)
    {
        foreach (var value in values.Order(StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"{member}:{value.Length}:{value};");
        }
    }
}
