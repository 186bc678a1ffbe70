using Materia.Api.Evaluations;
using Materia.Api.Serving;
using Materia.Formulation;
using Materia.Formulation.Substituting;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Substitutions;

/// <summary>Formulas that do without an ingredient.</summary>
public static class SubstitutionEndpoints
{
    /// <summary>A body butter whose maker has run out of mango butter, and what the maker has; the tests send it as it stands.</summary>
    internal const string Example = """
        {
          "formula": {
            "title": "Mango body butter", "use": "body-lotion", "market": "eu",
            "lines": [
              { "ingredient": "mango-butter", "percent": 30 },
              { "ingredient": "shea-butter", "percent": 20 },
              { "ingredient": "coconut-oil", "percent": 15 },
              { "ingredient": "beeswax", "percent": 5 },
              { "ingredient": "olive-oil", "balance": true } ] },
          "without": [ "mango-butter" ],
          "pantry": [ { "ingredient": "kokum-butter" }, { "ingredient": "cocoa-butter" }, { "ingredient": "cupuacu-butter" }, { "ingredient": "sal-butter" } ],
          "locked": [ "beeswax" ],
          "exclude": { "scopes": [ "allergen:tree-nut" ] },
          "limit": 3
        }
        """;

    /// <summary>Adds <c>POST /substitutions</c>.</summary>
    public static IEndpointRouteBuilder MapSubstitutions(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/substitutions", FindAsync)
            .WithName("SubstituteIngredients")
            .WithTags("Evaluations")
            .WithSummary("Whole formulas that do without an ingredient")
            .WithDescription(
                "Takes a formula and the ingredients to do without, and answers with whole formulas at 100 %, nearest first. The missing ingredient is replaced by one to three others and the free fats are balanced anew, so that the blend's figures stay where they were. " +
                "Each formula can be posted to /v1/evaluations as it stands; differences gives each figure before and after, notice what a user will notice, warnings what to look at. distance is the mean difference in noticeable steps (method noticeable-steps): below 1 little is noticed. " +
                "No formula that exceeds a limit of law or trade standard is given. The same request gives the same answer; cut says that the time budget ended the search early. The figures are a drafting aid: before a product is sold, have a qualified safety assessor judge it.")
            .Accepts<SubstitutionRequest>("application/json")
            .Produces<Substitution>()
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status422UnprocessableEntity)
            .ProducesProblem(StatusCodes.Status429TooManyRequests)
            .WithBodyExample(Example);
        return routes;
    }

    private static async Task<Results<JsonHttpResult<Substitution>, ProblemHttpResult>> FindAsync(HttpContext context, ServedRelease served, TimeProvider time)
    {
        var (request, problem) = await StrictBody.ReadAsync<SubstitutionRequest>(context, served.Index, FormulationJson.Options);
        if (request is null)
        {
            return problem!;
        }

        var today = DateOnly.FromDateTime(time.GetUtcNow().UtcDateTime);
        var (answer, faults) = SubstitutionFinder.Find(request, served.Release, today, time, context.RequestAborted);
        return answer is null ? StrictBody.Refuse(faults, served.Index) : TypedResults.Json(answer, EvaluationJson.Options);
    }
}
