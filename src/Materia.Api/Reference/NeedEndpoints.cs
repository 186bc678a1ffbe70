using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Catalogue.Needs;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Reference;

/// <summary>What people say of hair, skin and choices, and what follows for a formula.</summary>
public static class NeedEndpoints
{
    private static readonly QueryParameter Subject = new("subject", "What the needs are about.") { Repeatable = true, Words = KebabCase<NeedSubject>.Words };

    /// <summary>Adds <c>GET /needs</c>.</summary>
    public static IEndpointRouteBuilder MapNeeds(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/needs", List)
            .WithName("ListNeeds")
            .WithTags("Reference tables")
            .WithSummary("What people say of hair and skin, and what follows")
            .WithDescription(
                "Each need with targets for a blend, ingredients to favour, to hold back on or to leave out, and cautions, each with its reason, source and grade. " +
                "Targets are a start to adjust. They are neither a verdict on anybody's hair or skin nor medical advice. opposes names the need that it cannot go with at one place.")
            .WithQuery(Subject)
            .WithExample("/v1/needs")
            .WithExample("/v1/needs?subject=choice");
        return routes;
    }

    private static Results<CatalogueResult<Listing<Need>>, ProblemHttpResult> List(HttpRequest request, ServedRelease served)
    {
        var faults = new RequestFaults();
        var subjects = new QueryReader(request.Query, faults).Words<NeedSubject>(Subject.Name);
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        return new CatalogueResult<Listing<Need>>(served, Listing<Need>.Of([.. served.Release.Content.Needs.Where(n => subjects.Count == 0 || subjects.Contains(n.Subject))]));
    }
}
