namespace Materia.Regulation.Rollup;

/// <summary>How much of a regulated substance is in a formula, by all materials together.</summary>
/// <param name="Amount">What the stated compositions add up to [%], every digit kept.</param>
/// <param name="Contributions">What brings it, the largest first, every digit kept.</param>
/// <param name="NotExcluded">
/// The most that there may be of it besides, where a material could hold it and no statement says whether it does, or how much at
/// most [%]; 0 where all is accounted for.
/// </param>
/// <param name="Unstated">Those materials.</param>
internal sealed record SubstanceAmount(Amount Amount, IReadOnlyList<ExactContribution> Contributions, decimal NotExcluded, IReadOnlyList<string> Unstated)
{
    private IReadOnlyList<Contribution>? shown;

    /// <summary>The contributions to show.</summary>
    public IReadOnlyList<Contribution> Shown => shown ??= [.. Contributions.Select(c => c.Shown())];
}
