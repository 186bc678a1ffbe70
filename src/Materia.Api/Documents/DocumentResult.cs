using Microsoft.Net.Http.Headers;

namespace Materia.Api.Documents;

/// <summary>An answer that is not JSON: a document, a table or a figure.</summary>
/// <param name="Body">Its bytes.</param>
/// <param name="MediaType">Its media type.</param>
/// <param name="FileName">The name under which a browser saves it.</param>
public sealed record DocumentResult(byte[] Body, string MediaType, string FileName) : IResult
{
    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var response = httpContext.Response;
        response.ContentType = MediaType.StartsWith("text/", StringComparison.Ordinal) ? $"{MediaType}; charset=utf-8" : MediaType;
        response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline") { FileName = FileName }.ToString();
        if (MediaType == "text/html")
        {
            response.Headers.ContentSecurityPolicy = PaperStyle.Policy;
        }

        response.ContentLength = Body.Length;
        await response.Body.WriteAsync(Body, httpContext.RequestAborted);
    }
}
