using Materia.Catalogue;
using Materia.Formulation.Optimising;
using Materia.Formulation.Substituting;

namespace Materia.Formulation.Designing;

/// <summary>Finds formulas that meet targets.</summary>
public static class DesignFinder
{
    /// <summary>Checks a request and searches.</summary>
    /// <param name="request">The request.</param>
    /// <param name="release">The release.</param>
    /// <param name="asOf">The day on which the product is placed on the market.</param>
    /// <param name="clock">What tells the time for the time budget.</param>
    /// <param name="cancellation">Cancelled when nobody waits any more.</param>
    /// <returns>The answer, or all faults of the request.</returns>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    public static (Design? Answer, IReadOnlyList<FormulaFault> Faults) Find(
        DesignRequest request, Release release, DateOnly asOf, TimeProvider clock, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(release);
        var (found, faults) = DesignReading.Read(request, release, asOf);
        if (found is null)
        {
            return (null, faults);
        }

        var deadline = new Deadline(clock, TimeSpan.FromSeconds((double)(request.TimeBudget ?? SearchRules.UsualBudget)), cancellation);
        var search = new DesignSearch(found, deadline);
        var proposals = search.Run().Select(d => DesignWriter.Write(found, search, d)).ToList();
        return (new Design
        {
            Release = release.Number,
            Proposals = proposals,
            Cut = deadline.Cut,
            Note = proposals.Count == 0 ? "No formula of the pantry keeps the limits of law and trade standard, the constraints and the number of materials together."
                : proposals[0].Targets.All(t => t.Met) ? null
                : $"No formula found meets every target; the nearest misses {string.Join(", ", proposals[0].Targets.Where(t => !t.Met).Select(t => t.Property))}.",
            Needs = found.Needs.Resolved,
            Notes = found.Notes,
            Method = SubstitutionFinder.Method,
            Warnings = [Evaluation.Caution],
        }, []);
    }
}
