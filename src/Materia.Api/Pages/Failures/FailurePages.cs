using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace Materia.Api.Pages.Failures;

/// <summary>Answers a browser with a page where a program gets a problem (RFC 9457).</summary>
public static class FailurePages
{
    private const string EnhancedNavigation = "blazor-enhanced-nav";

    private static readonly string[] ForPrograms = ["/v1", "/openapi", "/health", "/metrics", "/assets"];

    /// <summary>Whether somebody sits at a browser: the path is none of those for programs, and HTML is asked for.</summary>
    public static bool Concerns(HttpContext context) =>
        !Array.Exists(ForPrograms, p => context.Request.Path.StartsWithSegments(p))
        && MediaTypeHeaderValue.TryParseList(context.Request.Headers.Accept, out var accepted)
        && accepted.Any(a => a.MediaType.Equals("text/html", StringComparison.OrdinalIgnoreCase) && a.Quality is not 0);

    /// <summary>Makes the answer of a page say that there is no such thing; the framework then drops what the page renders, and this page takes its place.</summary>
    /// <param name="context">The request.</param>
    /// <param name="nearest">Ids of ingredients that may have been meant.</param>
    public static void NotFound(HttpContext context, IReadOnlyList<string> nearest)
    {
        context.Features.Set(new NearestIds(nearest));
        context.Response.StatusCode = StatusCodes.Status404NotFound;
    }

    /// <summary>Writes the page for a status code.</summary>
    public static async Task WriteAsync(HttpContext context, int status)
    {
        // A page that failed half way has used up the renderer of the request's own scope.
        await using var scope = context.RequestServices.CreateAsyncScope();
        context.RequestServices = scope.ServiceProvider;
        // A page that failed half way has set it already, and the framework adds it again.
        context.Response.Headers.Remove(EnhancedNavigation);
        context.Response.Headers.CacheControl = "no-store";
        await new RazorComponentResult<FailurePage>(new { Status = status, Nearest = context.Features.Get<NearestIds>()?.Ids ?? [] }) { StatusCode = status }.ExecuteAsync(context);
    }

    private sealed record NearestIds(IReadOnlyList<string> Ids);
}
