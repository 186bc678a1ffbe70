using System.ComponentModel;
using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Reference;

/// <summary>The works that statements come from.</summary>
public static class SourceEndpoints
{
    /// <summary>Adds <c>GET /sources</c> and <c>GET /sources/{id}</c>.</summary>
    public static IEndpointRouteBuilder MapSources(this IEndpointRouteBuilder routes)
    {
        var sources = routes.MapGroup("/sources").WithTags("Reference tables");
        sources.MapGet("", List)
            .WithName("ListSources")
            .WithSummary("The works that figures come from")
            .WithDescription("All sources of the release by key: papers, books, standards, laws, data sets and suppliers' sheets, and the two that are no work: trade practice and recollection.")
            .WithExample("/v1/sources");
        sources.MapGet("/{id}", Get)
            .WithName("GetSource")
            .WithSummary("One source in full")
            .WithDescription("The work behind a source key: authors, title, year, where it stands, and what a reader must know to judge it.")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .WithExample("/v1/sources/recalled");
        return routes;
    }

    private static CatalogueResult<Listing<Source>> List(ServedRelease served) =>
        new(served, Listing<Source>.Of(served.Release.Content.Sources));

    private static Results<CatalogueResult<Source>, ProblemHttpResult> Get(
        [Description("The source's key, in kebab case.")] string id, ServedRelease served)
    {
        if (served.Release.FindSource(id) is { } source)
        {
            return new CatalogueResult<Source>(served, source);
        }

        var nearest = NearestWord.Of(id, served.Release.Content.Sources.Select(s => s.Id));
        return Problems.NotFound($"There is no source '{id}'. " + (nearest is null ? "GET /v1/sources lists them all." : $"Did you mean {nearest}?"));
    }
}
