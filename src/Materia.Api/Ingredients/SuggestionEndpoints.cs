using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Search;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Ingredients;

/// <summary>Completions for a search box.</summary>
public static class SuggestionEndpoints
{
    private const int UsualLimit = 10;
    private const int GreatestLimit = 50;

    /// <summary>Adds <c>GET /suggestions</c>.</summary>
    public static IEndpointRouteBuilder MapSuggestions(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/suggestions", List)
            .WithName("ListSuggestions")
            .WithTags("Ingredients")
            .WithSummary("Completions for a search box")
            .WithDescription("The best name of each ingredient that the typed text matches, best first, with the ingredient's id. The last word may be unfinished, and typing errors are forgiven.")
            .WithQuery(
                new("text", "What has been typed so far.") { Required = true, Example = "shea b" },
                new("limit", "How many to give at most.") { Value = QueryValue.Whole, Least = 1, Greatest = GreatestLimit, Example = UsualLimit })
            .WithExample("/v1/suggestions?text=shea%20b");
        return routes;
    }

    private static Results<CatalogueResult<Listing<SuggestedName>>, ProblemHttpResult> List(HttpRequest request, ServedRelease served)
    {
        var faults = new RequestFaults();
        var reader = new QueryReader(request.Query, faults);
        var text = reader.Text("text", SearchRequest.LongestText);
        var limit = reader.Whole("limit", 1, GreatestLimit, UsualLimit);
        if (text is null && !faults.Any)
        {
            faults.Add("?text", "text is missing; send what has been typed so far, such as ?text=shea.");
        }

        return faults.Any || text is null
            ? Problems.InvalidRequest(faults)
            : new CatalogueResult<Listing<SuggestedName>>(
                served, Listing<SuggestedName>.Of([.. served.Index.Suggest(text, limit).Select(SuggestedName.Of)]));
    }
}
