using Materia.Api.Http;
using Materia.Api.Serving;

namespace Materia.Api.Reference;

/// <summary>The jobs in which ingredients can stand in for each other.</summary>
public static class SubstitutionGroupEndpoints
{
    /// <summary>Adds <c>GET /substitution-groups</c>.</summary>
    public static IEndpointRouteBuilder MapSubstitutionGroups(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/substitution-groups", List)
            .WithName("ListSubstitutionGroups")
            .WithTags("Reference tables")
            .WithSummary("The groups of ingredients that can stand in for each other")
            .WithDescription("Each job with the ingredients that can do it: the reference that the others are compared with, how much replaces one part of it where that is known, and what changes.")
            .WithExample("/v1/substitution-groups");
        return routes;
    }

    private static CatalogueResult<Listing<SubstitutionGroupRecord>> List(ServedRelease served) =>
        new(served, Listing<SubstitutionGroupRecord>.Of(SubstitutionGroupRecord.All(served.Release)));
}
