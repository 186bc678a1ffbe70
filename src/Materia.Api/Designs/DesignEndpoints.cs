using Materia.Api.Evaluations;
using Materia.Api.Serving;
using Materia.Formulation;
using Materia.Formulation.Designing;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Designs;

/// <summary>Formulas made to targets.</summary>
public static class DesignEndpoints
{
    /// <summary>A balm from a small pantry with prices; the tests send it as it stands.</summary>
    internal const string Example = """
        {
          "title": "Balm that holds its shape", "use": "body-lotion", "market": "eu",
          "pantry": [
            { "ingredient": "shea-butter", "pricePerKilogram": 9 },
            { "ingredient": "cocoa-butter", "pricePerKilogram": 12 },
            { "ingredient": "coconut-oil", "pricePerKilogram": 5 },
            { "ingredient": "sunflower-oil", "pricePerKilogram": 3 },
            { "ingredient": "olive-oil", "pricePerKilogram": 8 },
            { "ingredient": "beeswax", "pricePerKilogram": 16 } ],
          "targets": [
            { "property": "solid-content", "temperature": 20, "low": 25, "high": 35, "weight": 2 },
            { "property": "clear-point", "high": 50 },
            { "property": "oxidisability", "high": 2 },
            { "property": "cost", "high": 8 } ],
          "constraints": [ { "ingredient": "beeswax", "minPercent": 2, "maxPercent": 6 }, { "kind": "butter", "minPercent": 20 } ],
          "ingredients": { "min": 3, "max": 5 },
          "limit": 3
        }
        """;

    /// <summary>Adds <c>POST /designs</c>.</summary>
    public static IEndpointRouteBuilder MapDesigns(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/designs", FindAsync)
            .WithName("DesignFormulas")
            .WithTags("Evaluations")
            .WithSummary("Formulas made to targets from what is at hand")
            .WithDescription(
                "Takes a pantry, targets (a value, or a range that may be open at one end, with a weight) and constraints, and answers with formulas at 100 %, best first, each of other materials, with every target met or not and its value. " +
                "distance is the mean of what lies outside the targets in noticeable steps (method noticeable-steps), 0 when all are met. No formula that exceeds a limit of law or trade standard is given; constraints are always kept. " +
                "Constraints that contradict each other and targets that no blend of the pantry can reach are refused with the conflict named. The same request gives the same answer; cut says that the time budget ended the search early. " +
                "The figures are a drafting aid: before a product is sold, have a qualified safety assessor judge it.")
            .Accepts<DesignRequest>("application/json")
            .Produces<Design>()
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status422UnprocessableEntity)
            .ProducesProblem(StatusCodes.Status429TooManyRequests)
            .WithBodyExample(Example);
        return routes;
    }

    private static async Task<Results<JsonHttpResult<Design>, ProblemHttpResult>> FindAsync(HttpContext context, ServedRelease served, TimeProvider time)
    {
        var (request, problem) = await StrictBody.ReadAsync<DesignRequest>(context, served.Index, FormulationJson.Options);
        if (request is null)
        {
            return problem!;
        }

        var today = DateOnly.FromDateTime(time.GetUtcNow().UtcDateTime);
        var (answer, faults) = DesignFinder.Find(request, served.Release, today, time, context.RequestAborted);
        return answer is null ? StrictBody.Refuse(faults, served.Index) : TypedResults.Json(answer, EvaluationJson.Options);
    }
}
