using Materia.Api.Http;
using Materia.Api.Serving;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Health;

/// <summary>Probes for whoever runs the service.</summary>
public static class HealthEndpoints
{
    private static readonly Health Live = new() { Status = "live" };

    /// <summary>Adds <c>/health/live</c> and <c>/health/ready</c>.</summary>
    public static IEndpointRouteBuilder MapHealth(this IEndpointRouteBuilder routes)
    {
        var health = routes.MapGroup("/health").WithTags("Health");
        health.MapGet("/live", GetLive)
            .WithName("GetLive")
            .WithSummary("Whether the process answers")
            .WithDescription("Always the same small answer while the process runs, whatever the database does.");
        health.MapGet("/ready", GetReady)
            .WithName("GetReady")
            .WithSummary("Whether the catalogue is loaded")
            .WithDescription("200 with the number of the release once requests can be answered; 503 with the reason until then.")
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);
        return routes;
    }

    private static Ok<Health> GetLive() => TypedResults.Ok(Live);

    private static Results<Ok<Health>, ProblemHttpResult> GetReady(CurrentRelease current) => current.Take() is { } served
        ? TypedResults.Ok(new Health { Status = "ready", Release = served.Release.Number })
        : Problems.Of(ProblemKinds.NotReady, current.Obstacle?.Reason);
}
