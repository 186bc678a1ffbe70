using System.Text.Json;
using Materia.Api.Evaluations.Reading;
using Materia.Api.Http;
using Materia.Formulation;
using Materia.Search;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Evaluations;

/// <summary>Reads the body of a call that takes JSON and no query.</summary>
internal static class StrictBody
{
    /// <summary>The body as a <typeparamref name="T"/>, or the problem to answer with; exactly one of the two.</summary>
    public static async Task<(T? Value, ProblemHttpResult? Problem)> ReadAsync<T>(HttpContext context, IngredientIndex index, JsonSerializerOptions options)
        where T : class
    {
        if (!RequestBody.IsJson(context.Request))
        {
            return (null, Problems.Of(ProblemKinds.UnsupportedMediaType));
        }

        var (value, faults) = StrictJson.Read<T>(await RequestBody.ReadAsync(context), options);
        return value is null ? (null, Problems.InvalidRequest(FormulaProblem.Of(faults, index))) : (value, null);
    }

    /// <summary>The problem of a body that has the right form and cannot be worked out.</summary>
    public static ProblemHttpResult Refuse(IReadOnlyList<FormulaFault> faults, IngredientIndex index) => Problems.Unprocessable(FormulaProblem.Of(faults, index));
}
