using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;

namespace Materia.Api.Reference;

/// <summary>The table of product types.</summary>
public static class UseEndpoints
{
    /// <summary>Adds <c>GET /uses</c>.</summary>
    public static IEndpointRouteBuilder MapUses(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/uses", List)
            .WithName("ListUses")
            .WithTags("Reference tables")
            .WithSummary("The product types a formula can be for")
            .WithDescription("The keys that a formula's use takes, such as hair-mask-rinse-off, with the part of the body, whether the product stays on or is washed off, the category of the fragrance standards, and what to know before it is used on children or near the eyes.")
            .WithExample("/v1/uses");
        return routes;
    }

    private static CatalogueResult<Listing<ProductUse>> List(ServedRelease served) =>
        new(served, Listing<ProductUse>.Of(served.Release.Content.Uses));
}
