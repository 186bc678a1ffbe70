using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;

namespace Materia.Api.Reference;

/// <summary>The table of fatty acids and fatty alcohols.</summary>
public static class FattyAcidEndpoints
{
    /// <summary>Adds <c>GET /fatty-acids</c>.</summary>
    public static IEndpointRouteBuilder MapFattyAcids(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/fatty-acids", List)
            .WithName("ListFattyAcids")
            .WithTags("Reference tables")
            .WithSummary("The fatty acids and fatty alcohols")
            .WithDescription(
                "Every acid and alcohol that a profile may name: its symbol (carbons, double bonds, place of the first double bond counted from the methyl end), names, molar mass [g/mol] and melting point [Cel], with the source.")
            .WithExample("/v1/fatty-acids");
        return routes;
    }

    private static CatalogueResult<Listing<FattyAcid>> List(ServedRelease served) =>
        new(served, Listing<FattyAcid>.Of(served.Release.Content.FattyAcids));
}
