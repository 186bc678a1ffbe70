using System.Buffers.Text;
using System.IO.Compression;
using System.Text.Json;
using Materia.Api.Evaluations.Reading;
using Materia.Formulation;

namespace Materia.Api.Pages.Formulas;

/// <summary>
/// A formula as a piece of an address: <c>1.</c>, the version, and the formula's JSON deflated and written in base64url. The whole state
/// of the formula page is in it, so that a link kept or passed on opens the same formula.
/// </summary>
public static class FormulaLink
{
    /// <summary>The longest text that is read [characters]; servers and proxies cut addresses at 8 kB.</summary>
    public const int LongestText = 7000;

    /// <summary>The largest JSON that is unpacked [byte]; a formula of 200 lines has a tenth of it.</summary>
    public const int LargestJson = 262_144;

    private const string Version = "1.";

    /// <summary>Writes a formula.</summary>
    public static string Encode(Formula formula)
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            JsonSerializer.Serialize(deflate, formula, FormulationJson.Options);
        }

        return Version + Base64Url.EncodeToString(packed.GetBuffer().AsSpan(0, (int)packed.Length));
    }

    /// <summary>The address of the formula page with a formula.</summary>
    public static string Url(Formula formula) => "/formula?f=" + Encode(formula);

    /// <summary>Reads what <see cref="Encode"/> wrote.</summary>
    /// <returns>The formula, or everything that is wrong; exactly one of the two.</returns>
    public static (Formula? Formula, IReadOnlyList<FormulaFault> Faults) Decode(string text)
    {
        if (text.Length > LongestText)
        {
            return Fault($"This link is longer than {LongestText} characters, which no formula of this page is. Send the formula to the API in place of it.");
        }

        if (!text.StartsWith(Version, StringComparison.Ordinal))
        {
            return Fault("This link was not made by this page, or by a later version of it. Copy the whole link again.");
        }

        return Unpack(text[Version.Length..]) is { } json
            ? StrictJson.Read<Formula>(json, FormulationJson.Options)
            : Fault("This link is not whole: a part of it was lost or changed. Copy the whole link again.");
    }

    private static byte[]? Unpack(string text)
    {
        if (text.Length == 0 || !Base64Url.IsValid(text))
        {
            return null;
        }

        var packed = Base64Url.DecodeFromChars(text);
        try
        {
            using var deflate = new DeflateStream(new MemoryStream(packed), CompressionMode.Decompress);
            var json = new byte[LargestJson + 1];
            var read = deflate.ReadAtLeast(json, json.Length, throwOnEndOfStream: false);
            return read is 0 or > LargestJson ? null : json[..read];
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    private static (Formula? Formula, IReadOnlyList<FormulaFault> Faults) Fault(string message) => (null, [new FormulaFault("", message)]);
}
