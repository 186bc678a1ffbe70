using System.ComponentModel;
using Materia.Api.Http;
using Materia.Api.Serving;
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
            .WithDescription("All sources of the release by key: papers, books, standards, laws, data sets and suppliers' sheets, and the two that are no work: trade practice and recollection. Each with the number of statements, by grade, and the methods that rest on it.")
            .WithExample("/v1/sources");
        sources.MapGet("/{id}", Get)
            .WithName("GetSource")
            .WithSummary("One source in full")
            .WithDescription("The work behind a source key: authors, title, year, where it stands, and what a reader must know to judge it; and what rests on it: the ingredients with the number of their statements by grade, and the methods.")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .WithExample("/v1/sources/recalled");
        return routes;
    }

    private static CatalogueResult<Listing<SourceRecord>> List(ServedRelease served) =>
        new(served, Listing<SourceRecord>.Of(served.Resting.Listed));

    private static Results<CatalogueResult<SourceRecord>, ProblemHttpResult> Get(
        [Description("The source's key, in kebab case.")] string id, ServedRelease served)
    {
        if (served.Resting.Find(id) is { } source)
        {
            return new CatalogueResult<SourceRecord>(served, source);
        }

        var nearest = NearestWord.Of(id, served.Release.Content.Sources.Select(s => s.Id));
        return Problems.NotFound($"There is no source '{id}'. " + (nearest is null ? "GET /v1/sources lists them all." : $"Did you mean {nearest}?"));
    }
}
