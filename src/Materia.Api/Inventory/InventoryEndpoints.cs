using System.Text.Json.Nodes;
using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Search;
using Materia.Search.Inventory;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Inventory;

/// <summary>The official inventory of ingredient names.</summary>
public static class InventoryEndpoints
{
    private const int UsualLimit = 20;

    /// <summary>Adds <c>GET /inventory</c>.</summary>
    public static IEndpointRouteBuilder MapInventory(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/inventory", List)
            .WithName("ListInventory")
            .WithTags("Reference tables")
            .WithSummary("The official European inventory of ingredient names")
            .WithDescription(
                "Names, CAS and EC numbers and functions as the official inventory gives them, where one was imported. Nothing in it was curated: " +
                "ingredients holds the ids of the curated records that carry the same INCI name. The last word of text may be unfinished, and typing errors are forgiven.")
            .WithQuery(
                new("text", "Words of the names, or a CAS or EC number.") { Example = "cetyl alcohol" },
                new("function", "A function in kebab case; repeatable, one of them must hold.") { Repeatable = true, Example = new JsonArray("humectant") },
                new("limit", "How many to give at most.") { Value = QueryValue.Whole, Least = 1, Greatest = SearchRequest.GreatestLimit, Example = UsualLimit },
                new("after", "The cursor that the page before gave as next."))
            .WithExample("/v1/inventory?text=cetyl%20alcohol")
            .WithExample("/v1/inventory?function=humectant&limit=5");
        return routes;
    }

    private static Results<CatalogueResult<InventoryAnswer>, ProblemHttpResult> List(HttpContext context, ServedRelease served)
    {
        var faults = new RequestFaults();
        var reader = new QueryReader(context.Request.Query, faults);
        var request = new InventoryRequest
        {
            Text = reader.Text("text", SearchRequest.LongestText),
            Functions = reader.All("function"),
            Limit = reader.Whole("limit", 1, SearchRequest.GreatestLimit, UsualLimit),
            After = reader.Text("after"),
        };
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        if (served.Inventory is not { } inventory)
        {
            return new CatalogueResult<InventoryAnswer>(served, new()
            {
                Total = 0,
                Items = [],
                Note = "No inventory was imported. Export it from the official site as CSV, run the seed command inventory with the file, and start the service again.",
            });
        }

        var page = inventory.Index.Search(request);
        if (page.Faults.Count > 0)
        {
            foreach (var fault in page.Faults)
            {
                faults.Add("?" + fault.Member, fault.Message);
            }

            return Problems.InvalidRequest(faults);
        }

        NextLink.Add(context, page.Next);
        return new CatalogueResult<InventoryAnswer>(served, new()
        {
            Total = page.Total,
            Items = [.. page.Entries.Select(e => InventoryItem.Of(e, inventory))],
            Imported = inventory.Inventory.Imported,
            Note = page.AsTyped || page.Total == 0 ? null : "Nothing matched as it was typed; typing errors were forgiven.",
            Next = page.Next,
        });
    }
}
