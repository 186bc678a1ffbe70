using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Formulation;

namespace Materia.Api.Reference;

/// <summary>The methods that computed figures name.</summary>
public static class MethodEndpoints
{
    private static readonly Listing<Method> All = Listing<Method>.Of([.. AllMethods.ById.Values.OrderBy(m => m.Id, StringComparer.Ordinal)]);

    /// <summary>Adds <c>GET /methods</c>.</summary>
    public static IEndpointRouteBuilder MapMethods(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/methods", List)
            .WithName("ListMethods")
            .WithTags("Reference tables")
            .WithSummary("How computed figures are worked out")
            .WithDescription("Every method that a result can name: its equation, where it holds, the error to expect and what that was measured against, and its sources.")
            .WithExample("/v1/methods");
        return routes;
    }

    private static CatalogueResult<Listing<Method>> List(ServedRelease served) => new(served, All);
}
