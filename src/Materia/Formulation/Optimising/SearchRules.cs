using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation.Optimising;

/// <summary>Checks what searches have in common.</summary>
internal static class SearchRules
{
    /// <summary>How long a search takes when nothing else is asked [s].</summary>
    public const decimal UsualBudget = 2;

    /// <summary>The longest search [s].</summary>
    public const decimal LongestBudget = 10;

    /// <summary>Adds the faults of the limit, the time budget and the exclusions.</summary>
    public static void Check(int? limit, int mostLimit, decimal? budget, Exclusions? exclude, Release release, FaultList faults)
    {
        faults.Within("/limit", limit, 1, mostLimit, "The number of formulas");
        if (budget is <= 0 or > LongestBudget)
        {
            faults.Add("/timeBudget", $"A time budget is over 0 and up to {Fault.Text(LongestBudget)} s.");
        }

        if (exclude is null)
        {
            return;
        }

        faults.Within("/exclude/maxComedogenic", exclude.MaxComedogenic, 0, 5, "A comedogenic grade");
        for (var i = 0; i < exclude.Ingredients.Count; i++)
        {
            if (release.FindIngredient(exclude.Ingredients[i]) is null)
            {
                faults.Add(new FormulaFault($"/exclude/ingredients/{i}", $"\"{Fault.Shorten(exclude.Ingredients[i])}\" is not an ingredient of the catalogue. Use an ingredient's id, such as \"shea-butter\".")
                {
                    UnknownIngredient = exclude.Ingredients[i],
                });
            }
        }
    }
}
