using System.ComponentModel;
using Materia.Api.Http;
using Materia.Api.Serving;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Ingredients;

/// <summary>The ingredients of the catalogue.</summary>
public static class IngredientEndpoints
{
    private const int NearestShown = 3;

    /// <summary>The path of an ingredient's record.</summary>
    public static string Path(string id) => "/v1/ingredients/" + id;

    /// <summary>Adds <c>GET /ingredients</c> and <c>GET /ingredients/{id}</c>.</summary>
    public static IEndpointRouteBuilder MapIngredients(this IEndpointRouteBuilder routes)
    {
        var ingredients = routes.MapGroup("/ingredients").WithTags("Ingredients");
        ingredients.MapGet("", Search)
            .WithName("SearchIngredients")
            .WithSummary("Search the catalogue")
            .WithDescription(
                "Finds ingredients by name, kind, function, origin and figures; everything that is asked must hold. An ingredient without the figure asked for is not found. " +
                "Each hit says why it was found; facets count the matches. Where there are more, next and the Link header lead to the next page.")
            .WithQuery(IngredientQueryParameters.All)
            .WithExample("/v1/ingredients?kind=butter&melting=..36&sort=melting")
            .WithExample("/v1/ingredients?text=shea%20buter")
            .WithExample("/v1/ingredients?acid=18:1n-9:40..&comedogenic=..2&limit=5");
        ingredients.MapGet("/{id}", Get)
            .WithName("GetIngredient")
            .WithSummary("The whole record of an ingredient")
            .WithDescription(
                "Everything that the catalogue says of one ingredient: names, registry numbers, functions, properties, fatty-acid profiles, constituents, comedogenic grades with their caveat, and cautions. " +
                "Each statement has its grade (evidence), the key of its source and where in the source it stands; sources holds every cited source in full. What is not known is absent.")
            .Produces(StatusCodes.Status301MovedPermanently)
            .ProducesProblem(StatusCodes.Status404NotFound)
            .WithExample("/v1/ingredients/kaolin");
        return routes;
    }

    private static Results<CatalogueResult<SearchAnswer>, ProblemHttpResult> Search(HttpContext context, ServedRelease served)
    {
        var faults = new RequestFaults();
        var request = IngredientQuery.Read(context.Request.Query, faults);
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        var page = served.Index.Search(request);
        IngredientQuery.Note(page.Faults, faults);
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        NextLink.Add(context, page.Next);
        return new CatalogueResult<SearchAnswer>(served, new()
        {
            Total = page.Total,
            Items = [.. page.Hits.Select(hit => IngredientHit.Of(served.Summaries[hit.IngredientId], hit.Matched))],
            Facets = page.Facets,
            DidYouMean = [.. page.DidYouMean.Select(SuggestedName.Of)],
            Next = page.Next,
        });
    }

    private static Results<CatalogueResult<IngredientRecord>, RedirectHttpResult, ProblemHttpResult> Get(
        [Description("The ingredient's id: its common name in kebab case. GET /v1/suggestions finds ids by any name.")] string id, ServedRelease served)
    {
        if (served.FindRecord(id) is { } record)
        {
            return new CatalogueResult<IngredientRecord>(record);
        }

        if (served.Release.FindPresentId(id) is { } present)
        {
            return TypedResults.Redirect(Path(present), permanent: true);
        }

        var nearest = served.Index.NearestIds(id, NearestShown);
        return Problems.NotFound($"There is no ingredient '{id}'. " + (nearest.Count == 0
            ? "GET /v1/suggestions?text= finds ids by any name."
            : $"Did you mean {string.Join(" or ", nearest)}?"));
    }
}
