using Materia.Api.Http;

namespace Materia.Api.Pages.Assets;

/// <summary>One file of the pages, with its encoded forms made once.</summary>
public sealed class PageAsset
{
    private readonly byte[] brotli;
    private readonly byte[] gzip;

    private PageAsset(string name, byte[] bytes)
    {
        (Name, Bytes) = (name, bytes);
        brotli = ContentCoding.Brotli.Encode(bytes);
        gzip = ContentCoding.Gzip.Encode(bytes);
    }

    /// <summary>The file's name.</summary>
    public string Name { get; }

    /// <summary>The file as it is.</summary>
    public byte[] Bytes { get; }

    /// <summary>Its media type.</summary>
    public string MediaType => Path.GetExtension(Name) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        _ => "application/octet-stream",
    };

    /// <summary>Reads a file.</summary>
    public static PageAsset Read(string name, Stream content)
    {
        using var bytes = new MemoryStream();
        content.CopyTo(bytes);
        return new(name, bytes.ToArray());
    }

    /// <summary>The bytes in the coding that a client takes.</summary>
    public byte[] In(ContentCoding coding) =>
        ReferenceEquals(coding, ContentCoding.Brotli) ? brotli : ReferenceEquals(coding, ContentCoding.Gzip) ? gzip : Bytes;
}
