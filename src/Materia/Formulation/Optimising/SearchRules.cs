using Materia.Formulation.Normalising;

namespace Materia.Formulation.Optimising;

/// <summary>Checks what searches have in common.</summary>
internal static class SearchRules
{
    /// <summary>How long a search takes when nothing else is asked [s].</summary>
    public const decimal UsualBudget = 2;

    /// <summary>The longest search [s].</summary>
    public const decimal LongestBudget = 10;

    /// <summary>Adds the faults of the limit and the time budget.</summary>
    public static void Check(int? limit, int mostLimit, decimal? budget, FaultList faults)
    {
        faults.Within("/limit", limit, 1, mostLimit, "The number of formulas");
        if (budget is <= 0 or > LongestBudget)
        {
            faults.Add("/timeBudget", $"A time budget is over 0 and up to {Fault.Text(LongestBudget)} s.");
        }
    }
}
