using Materia.Api.Pages.Failures;
using Materia.Api.Serving;

namespace Materia.Api.Pages;

/// <summary>Gives each request for a page the release that it works on, as <see cref="ReleaseHeaders"/> does for calls under <c>/v1</c>.</summary>
public sealed class PageRequests(RequestDelegate next, CurrentRelease current)
{
    /// <summary>The pages hold what their address says, which is the maker's own, and must fit the release of the moment.</summary>
    public const string Caching = "private, no-cache";

    /// <summary>Handles one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (!PageRoutes.IsPage(context) && !context.Request.Path.StartsWithSegments("/formula"))
        {
            return next(context);
        }

        if (current.Take() is not { } served)
        {
            context.Response.Headers.RetryAfter = "2";
            return FailurePages.WriteAsync(context, StatusCodes.Status503ServiceUnavailable);
        }

        context.Features.Set(served);
        context.Response.Headers.CacheControl = Caching;
        context.Response.Headers.Vary = "Accept-Encoding";
        return next(context);
    }
}
