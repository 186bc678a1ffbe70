using System.IO.Compression;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace Materia.Api.Http;

/// <summary>The codings that an answer can be sent in, and what each adds to the entity tag (RFC 9110 section 8.8.3.3).</summary>
public sealed class ContentCoding
{
    private readonly Func<Stream, Stream>? encoder;

    private ContentCoding(string? name, string tagSuffix, Func<Stream, Stream>? encoder)
    {
        Name = name;
        TagSuffix = tagSuffix;
        this.encoder = encoder;
    }

    /// <summary>As it is.</summary>
    public static ContentCoding Identity { get; } = new(null, "", null);

    /// <summary>Brotli.</summary>
    public static ContentCoding Brotli { get; } = new("br", "-br", s => new BrotliStream(s, CompressionLevel.Optimal, leaveOpen: true));

    /// <summary>Gzip.</summary>
    public static ContentCoding Gzip { get; } = new("gzip", "-gzip", s => new GZipStream(s, CompressionLevel.Optimal, leaveOpen: true));

    /// <summary>All, the smallest first.</summary>
    public static IReadOnlyList<ContentCoding> All { get; } = [Brotli, Gzip, Identity];

    /// <summary>The name in <c>Content-Encoding</c>, or <see langword="null"/> for <see cref="Identity"/>.</summary>
    public string? Name { get; }

    /// <summary>What it adds to the entity tag.</summary>
    public string TagSuffix { get; }

    /// <summary>The coding that the caller likes best of those that we like best: brotli, then gzip, then none.</summary>
    /// <param name="acceptEncoding">The <c>Accept-Encoding</c> header.</param>
    public static ContentCoding Choose(StringValues acceptEncoding)
    {
        if (acceptEncoding.Count == 0 || !StringWithQualityHeaderValue.TryParseList(acceptEncoding, out var accepted))
        {
            return Identity;
        }

        var (best, bestQuality) = (Identity, 0d);
        foreach (var coding in All)
        {
            if (coding.Name is { } name && Quality(name, accepted) is var quality && quality > bestQuality)
            {
                (best, bestQuality) = (coding, quality);
            }
        }

        return best;
    }

    /// <summary>Encodes <paramref name="bytes"/>.</summary>
    public byte[] Encode(byte[] bytes)
    {
        if (encoder is null)
        {
            return bytes;
        }

        using var encoded = new MemoryStream(bytes.Length / 4);
        using (var stream = encoder(encoded))
        {
            stream.Write(bytes);
        }

        return encoded.ToArray();
    }

    private static double Quality(string name, IList<StringWithQualityHeaderValue> accepted)
    {
        double? any = null;
        foreach (var value in accepted)
        {
            if (value.Value.Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                return value.Quality ?? 1;
            }

            if (value.Value.Equals("*", StringComparison.Ordinal))
            {
                any = value.Quality ?? 1;
            }
        }

        return any ?? 0;
    }
}
