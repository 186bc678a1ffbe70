using Microsoft.Net.Http.Headers;

namespace Materia.Api.Evaluations;

/// <summary>The body of a request as bytes.</summary>
internal static class RequestBody
{
    /// <summary>Whether the request says that its body is JSON in UTF-8.</summary>
    public static bool IsJson(HttpRequest request) =>
        request.HasJsonContentType()
        && MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
        && (!type.Charset.HasValue || type.Charset.Value.AsSpan().Trim('"').Equals("utf-8", StringComparison.OrdinalIgnoreCase));

    /// <summary>Reads the whole body.</summary>
    /// <exception cref="BadHttpRequestException">It is larger than the service takes (413); the host answers that.</exception>
    public static async Task<ReadOnlyMemory<byte>> ReadAsync(HttpContext context)
    {
        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        return body.ToArray();
    }
}
