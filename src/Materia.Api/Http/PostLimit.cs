using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace Materia.Api.Http;

/// <summary>How many POST requests one client address may make in a minute. Reads are cheap and cached and have no limit.</summary>
public static class PostLimit
{
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    /// <summary>Sets the limiter up.</summary>
    public static void Configure(RateLimiterOptions options, MateriaSettings settings)
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context =>
            RateLimitPartition.GetFixedWindowLimiter(context.Connection.RemoteIpAddress?.ToString() ?? "", _ => new()
            {
                PermitLimit = settings.RateLimit.PostsPerMinute,
                Window = Window,
                QueueLimit = 0,
            }));
        options.OnRejected = RefuseAsync;
    }

    private static async ValueTask RefuseAsync(OnRejectedContext rejected, CancellationToken cancellation)
    {
        var wait = rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out var left) ? left : Window;
        var seconds = Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        rejected.HttpContext.Response.Headers.RetryAfter = seconds;
        await ProblemWriter.WriteAsync(
            rejected.HttpContext, Problems.Details(ProblemKinds.TooManyRequests, $"This address has used up its POST requests for this minute; go on in {seconds} s."));
    }
}
