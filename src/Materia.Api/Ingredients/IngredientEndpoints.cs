using System.ComponentModel;
using System.Text.Json.Nodes;
using Materia.Api.Http;
using Materia.Api.Inventory;
using Materia.Api.Serving;
using Materia.Catalogue;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Ingredients;

/// <summary>The ingredients of the catalogue.</summary>
public static class IngredientEndpoints
{
    private static readonly QueryParameter Include = new(
        "include", "What is to be worked out and put beside the record, under computed. melting: how the ingredient melts on its own, from its composition: solid content against temperature, clear point, texture.")
    {
        Repeatable = true,
        Words = KebabCase<Included>.Words,
        Example = new JsonArray("melting"),
    };

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
                "Finds ingredients by name, kind, function, origin, charge, substitution group and figures; everything that is asked must hold. An ingredient without the figure asked for is not found. " +
                "Each hit says why it was found; facets count the matches. Where there are more, next and the Link header lead to the next page.")
            .WithQuery(IngredientQueryParameters.All)
            .WithExample("/v1/ingredients?kind=butter&melting=..36&sort=melting")
            .WithExample("/v1/ingredients?text=shea%20buter")
            .WithExample("/v1/ingredients?solidAt20=50..&solidAt32=..10&sort=-solidAt20")
            .WithExample("/v1/ingredients?acid=18:1n-9:40..&comedogenic=..2&limit=5");
        ingredients.MapGet("/{id}", Get)
            .WithName("GetIngredient")
            .WithSummary("The whole record of an ingredient")
            .WithDescription(
                "Everything that the catalogue says of one ingredient: names, registry numbers, functions, description, properties, fatty-acid profiles, constituents, parts, usual shares by type of product, handling, substitution groups, comedogenic grades with their caveat, and cautions. " +
                "Each statement has its grade (evidence), the key of its source and where in the source it stands; sources holds every cited source in full. What is not known is absent. " +
                "With include=melting, computed holds what was worked out from the record, with the key of its method; it never stands among the properties.")
            .WithQuery(Include)
            .Produces(StatusCodes.Status301MovedPermanently)
            .ProducesProblem(StatusCodes.Status404NotFound)
            .WithExample("/v1/ingredients/kaolin")
            .WithExample("/v1/ingredients/cocoa-butter?include=melting");
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
            Inventory = InventoryTier.Of(request, page, served),
            Next = page.Next,
        });
    }

    private static Results<CatalogueResult<IngredientRecord>, RedirectHttpResult, ProblemHttpResult> Get(
        [Description("The ingredient's id: its common name in kebab case. GET /v1/suggestions finds ids by any name.")] string id, HttpRequest request, ServedRelease served)
    {
        var faults = new RequestFaults();
        var included = new QueryReader(request.Query, faults).Words<Included>(Include.Name);
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        if (included.Count > 0 && served.Release.FindIngredient(id) is { } ingredient)
        {
            return new CatalogueResult<IngredientRecord>(
                served, IngredientRecord.Of(ingredient, served.Release) with { Computed = ComputedFigures.Of(ingredient, served.Release, included) });
        }

        if (served.FindRecord(id) is { } record)
        {
            return new CatalogueResult<IngredientRecord>(record);
        }

        if (served.Release.FindPresentId(id) is { } present)
        {
            return TypedResults.Redirect(Path(present) + request.QueryString, permanent: true);
        }

        return UnknownIngredient.NotFound(id, served.Index);
    }
}
