using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace Materia.Api.Pages.Failures;

/// <summary>Answers a browser with a page where a program gets a problem (RFC 9457).</summary>
public static class FailurePages
{
    private static readonly string[] ForPrograms = ["/v1", "/openapi", "/health", "/metrics", "/assets"];

    /// <summary>Whether somebody sits at a browser: the path is none of those for programs, and HTML is asked for.</summary>
    public static bool Concerns(HttpContext context) =>
        !Array.Exists(ForPrograms, p => context.Request.Path.StartsWithSegments(p))
        && MediaTypeHeaderValue.TryParseList(context.Request.Headers.Accept, out var accepted)
        && accepted.Any(a => a.MediaType.Equals("text/html", StringComparison.OrdinalIgnoreCase) && a.Quality is not 0);

    /// <summary>Writes the page for a status code.</summary>
    public static Task WriteAsync(HttpContext context, int status)
    {
        context.Response.Headers.CacheControl = "no-store";
        return new RazorComponentResult<FailurePage>(new { Status = status }) { StatusCode = status }.ExecuteAsync(context);
    }
}
