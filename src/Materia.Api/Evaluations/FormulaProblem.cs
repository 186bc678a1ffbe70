using Materia.Api.Http;
using Materia.Formulation;
using Materia.Search;

namespace Materia.Api.Evaluations;

/// <summary>Turns the faults of a formula into those of a request, with the nearest ids where an ingredient is unknown.</summary>
internal static class FormulaProblem
{
    private const int NearestShown = 3;

    /// <summary>Looking up nearest ids takes time, so that only the first unknown ingredients get them.</summary>
    private const int MostLookedUp = 10;

    public static RequestFaults Of(IReadOnlyList<FormulaFault> faults, IngredientIndex index)
    {
        var request = new RequestFaults();
        var lookedUp = 0;
        foreach (var fault in faults)
        {
            var nearest = fault.UnknownIngredient is { } id && lookedUp++ < MostLookedUp ? index.NearestIds(id, NearestShown) : [];
            request.Add(fault.Pointer, nearest.Count == 0 ? fault.Message : $"{fault.Message} The nearest are {string.Join(", ", nearest.Select(n => $"\"{n}\""))}.");
        }

        return request;
    }
}
