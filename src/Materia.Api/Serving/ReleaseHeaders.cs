using System.Globalization;
using Materia.Api.Http;

namespace Materia.Api.Serving;

/// <summary>
/// Gives each request under <c>/v1</c> the release it works on and names that release in the answer's headers; without a
/// release it answers 503 and when to come back.
/// </summary>
public sealed class ReleaseHeaders(RequestDelegate next, CurrentRelease current)
{
    /// <summary>The header with the release's number.</summary>
    public const string NumberHeader = "Materia-Release";

    /// <summary>The header with the day of the release.</summary>
    public const string DateHeader = "Materia-Release-Date";

    /// <summary>Handles one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (!context.Request.Path.StartsWithSegments("/v1", StringComparison.Ordinal))
        {
            return next(context);
        }

        if (current.Take() is not { } served)
        {
            return NotReadyAsync(context);
        }

        context.Features.Set(served);
        context.Response.Headers[NumberHeader] = served.Number;
        context.Response.Headers[DateHeader] = served.Date;
        return next(context);
    }

    private Task NotReadyAsync(HttpContext context)
    {
        var obstacle = current.Obstacle;
        var seconds = Math.Max(1, (int)Math.Ceiling(obstacle?.NextTry.TotalSeconds ?? 1));
        context.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        return ProblemWriter.WriteAsync(context, Problems.Details(ProblemKinds.NotReady, obstacle?.Reason));
    }
}
