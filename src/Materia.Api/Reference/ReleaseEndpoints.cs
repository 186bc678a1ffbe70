using Materia.Api.Http;
using Materia.Api.Serving;

namespace Materia.Api.Reference;

/// <summary>What the catalogue's present release holds.</summary>
public static class ReleaseEndpoints
{
    /// <summary>Adds <c>GET /release</c>.</summary>
    public static IEndpointRouteBuilder MapRelease(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/release", Get)
            .WithName("GetRelease")
            .WithTags("Release")
            .WithSummary("The release that answers come from")
            .WithDescription("Number, day, checksum and counts of the present release. Equal checksums mean equal data; every answer names its release in the Materia-Release header.")
            .WithExample("/v1/release");
        return routes;
    }

    private static CatalogueResult<ReleaseSummary> Get(ServedRelease served) => new(served, ReleaseSummary.Of(served.Release));
}
