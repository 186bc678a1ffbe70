using Materia.Api.Evaluations;
using Materia.Api.Evaluations.Reading;
using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Chemistry.Matching;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Matches;

/// <summary>What fat a fatty-acid profile belongs to.</summary>
public static class MatchEndpoints
{
    /// <summary>Adds <c>POST /matches</c>.</summary>
    public static IEndpointRouteBuilder MapMatches(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/matches", MatchAsync)
            .WithName("MatchProfile")
            .WithTags("Matches")
            .WithSummary("Which fat a fatty-acid profile belongs to")
            .WithDescription(
                "Takes the fatty acids of a supplier's certificate or a gas chromatogram and gives the nearest fats of the catalogue with the share that differs, mixtures of two that explain it clearly better, " +
                "and, when claimed names what it is sold as, whether it lies inside the published range, with the acids that do not. Acids that the measurement does not name are listed and not compared. " +
                "A profile ranks, it does not prove identity.")
            .Accepts<MatchRequest>("application/json")
            .Produces<ProfileMatching>()
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status422UnprocessableEntity)
            .ProducesProblem(StatusCodes.Status429TooManyRequests)
            .AddOpenApiOperationTransformer(MatchExample.AddTo);
        return routes;
    }

    private static async Task<Results<JsonHttpResult<ProfileMatching>, ProblemHttpResult>> MatchAsync(HttpContext context, ServedRelease served)
    {
        if (!RequestBody.IsJson(context.Request))
        {
            return Problems.Of(ProblemKinds.UnsupportedMediaType);
        }

        var (request, unread) = StrictJson.Read<MatchRequest>(await RequestBody.ReadAsync(context), ApiJson.Options);
        if (request is null)
        {
            return Problems.InvalidRequest(FormulaProblem.Of(unread, served.Index));
        }

        var faults = new RequestFaults();
        var (profile, claimed, limit) = MatchReading.Read(request, served, faults);
        return faults.Any
            ? Problems.Unprocessable(faults)
            : TypedResults.Json(ProfileMatching.Of(profile, claimed, served.Release, limit), EvaluationJson.Options);
    }
}
