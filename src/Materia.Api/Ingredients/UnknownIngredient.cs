using Materia.Api.Http;
using Materia.Search;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Ingredients;

/// <summary>What is said of an id that the catalogue lacks.</summary>
internal static class UnknownIngredient
{
    private const int NearestShown = 3;
    private const int LongestShown = 60;

    /// <summary>The sentence, with the nearest ids.</summary>
    public static string Message(string id, IngredientIndex index)
    {
        var nearest = index.NearestIds(id, NearestShown);
        return $"There is no ingredient '{(id.Length <= LongestShown ? id : id[..LongestShown] + "...")}'. " + (nearest.Count == 0
            ? "GET /v1/suggestions?text= finds ids by any name."
            : $"Did you mean {string.Join(" or ", nearest)}?");
    }

    /// <summary>404 with that sentence.</summary>
    public static ProblemHttpResult NotFound(string id, IngredientIndex index) => Problems.NotFound(Message(id, index));
}
