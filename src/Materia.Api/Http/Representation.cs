using Microsoft.Net.Http.Headers;

namespace Materia.Api.Http;

/// <summary>The bytes of one answer in each coding, encoded when first asked for, with their entity tags.</summary>
/// <param name="body">The bytes: UTF-8 text of the media type.</param>
/// <param name="tags">The entity tags.</param>
/// <param name="cacheControl">The <c>Cache-Control</c> header.</param>
/// <param name="mediaType">The <c>Content-Type</c> header.</param>
public sealed class Representation(byte[] body, EntityTags tags, string cacheControl, string mediaType = "application/json")
{
    /// <summary>Below this size [byte] a coding saves less than its header costs.</summary>
    private const int SmallestEncoded = 1000;

    private readonly byte[]?[] encoded = new byte[ContentCoding.All.Count][];

    /// <summary>Answers with the bytes, or with 304 when the caller holds them already.</summary>
    public Task WriteAsync(HttpContext context)
    {
        var (request, response) = (context.Request.Headers, context.Response);
        var coding = body.Length < SmallestEncoded ? ContentCoding.Identity : ContentCoding.Choose(request.AcceptEncoding);
        var tag = tags.Of(coding);
        response.Headers.CacheControl = cacheControl;
        response.Headers.Vary = "Accept, Accept-Encoding";
        if (request.IfNoneMatch.Count > 0 && tags.Held(request.IfNoneMatch, tag) is { } held)
        {
            response.Headers.ETag = held;
            response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        var bytes = Bytes(coding);
        response.Headers.ETag = tag;
        response.ContentType = mediaType;
        response.ContentLength = bytes.Length;
        if (coding.Name is { } name)
        {
            response.Headers[HeaderNames.ContentEncoding] = name;
        }

        return response.Body.WriteAsync(bytes, context.RequestAborted).AsTask();
    }

    private byte[] Bytes(ContentCoding coding)
    {
        if (ReferenceEquals(coding, ContentCoding.Identity))
        {
            return body;
        }

        // Two requests may encode at the same moment; both make the same bytes.
        ref var slot = ref encoded[ReferenceEquals(coding, ContentCoding.Brotli) ? 0 : 1];
        return slot ??= coding.Encode(body);
    }
}
