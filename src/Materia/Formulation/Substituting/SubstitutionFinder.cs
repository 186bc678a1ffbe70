using Materia.Catalogue;
using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>Finds formulas that do without an ingredient.</summary>
public static class SubstitutionFinder
{
    /// <summary>The key of the method of the distance.</summary>
    public const string Method = "noticeable-steps";

    /// <summary>A mean difference of one noticeable step or more is not near.</summary>
    private const double Near = 1;

    /// <summary>Checks a request and searches.</summary>
    /// <param name="request">The request.</param>
    /// <param name="release">The release.</param>
    /// <param name="asOf">The day on which the product is placed on the market.</param>
    /// <param name="clock">What tells the time for the time budget.</param>
    /// <param name="cancellation">Cancelled when nobody waits any more.</param>
    /// <returns>The answer, or all faults of the request.</returns>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    public static (Substitution? Answer, IReadOnlyList<FormulaFault> Faults) Find(
        SubstitutionRequest request, Release release, DateOnly asOf, TimeProvider clock, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(release);
        var (found, faults) = SubstitutionReading.Read(request, release, asOf);
        if (found is null)
        {
            return (null, faults);
        }

        var deadline = new Deadline(clock, TimeSpan.FromSeconds((double)(request.TimeBudget ?? SearchRules.UsualBudget)), cancellation);
        var search = new SubstitutionSearch(found, deadline);
        var drafts = search.Run();
        var writer = new ProposalWriter(found, search);
        var proposals = drafts.Select(writer.Write).ToList();
        return (new Substitution
        {
            Release = release.Number,
            Proposals = proposals,
            Cut = deadline.Cut,
            Note = Note(proposals, search),
            Notes = found.Notes,
            Method = Method,
            Warnings = [Evaluation.Caution],
        }, []);
    }

    private static string? Note(List<SubstitutionProposal> proposals, SubstitutionSearch search)
    {
        if (proposals is [])
        {
            return search.Columns.Count == search.Lines.Count
                ? "Nothing that may come in is for the same use. Allow more, or describe what is at hand in the pantry."
                : "No formula keeps all limits; look at the limits section of an evaluation of the formula as it is, and lower what exceeds one.";
        }

        if (proposals[0].Distance < Near)
        {
            return search.Model.Figures.Count == 0 ? "No figure of the formula can be compared; the proposals go by what the ingredients are for." : null;
        }

        var far = proposals[0].Differences.Where(d => d.Steps is not < 1).OrderByDescending(d => d.Steps ?? double.MaxValue).Take(4).Select(d => d.Property);
        return FormattableString.Invariant($"Nothing comes near: even the nearest formula is {proposals[0].Distance:0.0} noticeable steps off on average. What could not be kept: {string.Join(", ", far)}.");
    }
}
