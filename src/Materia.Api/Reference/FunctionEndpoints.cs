using Materia.Api.Http;
using Materia.Api.Serving;

namespace Materia.Api.Reference;

/// <summary>The functions in use.</summary>
public static class FunctionEndpoints
{
    /// <summary>Adds <c>GET /functions</c>.</summary>
    public static IEndpointRouteBuilder MapFunctions(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/functions", List)
            .WithName("ListFunctions")
            .WithTags("Reference tables")
            .WithSummary("The functions that ingredients have")
            .WithDescription("Every function of the official inventory's terms, in kebab case, that an ingredient of the catalogue has, with the number of ingredients and the search that finds them.")
            .WithExample("/v1/functions");
        return routes;
    }

    private static CatalogueResult<Listing<FunctionCount>> List(ServedRelease served) =>
        new(served, Listing<FunctionCount>.Of(FunctionCount.All(served.Release)));
}
