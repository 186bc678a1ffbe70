using Materia.Api.Http;
using Materia.Api.Serving;

namespace Materia.Api.Reference;

/// <summary>The kinds of material.</summary>
public static class KindEndpoints
{
    /// <summary>Adds <c>GET /kinds</c>.</summary>
    public static IEndpointRouteBuilder MapKinds(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/kinds", List)
            .WithName("ListKinds")
            .WithTags("Reference tables")
            .WithSummary("The kinds of material")
            .WithDescription("Every kind that an ingredient can be of, with its title in words, the number of ingredients and the search that finds them. A kind without ingredients is listed too.")
            .WithExample("/v1/kinds");
        return routes;
    }

    private static CatalogueResult<Listing<KindCount>> List(ServedRelease served) =>
        new(served, Listing<KindCount>.Of(KindCount.All(served.Release)));
}
