namespace Materia.Regulation;

/// <summary>How much of a regulated substance is in a formula, by all materials together.</summary>
/// <param name="Amount">What the known compositions add up to [%].</param>
/// <param name="Contributions">What brings it, the largest first.</param>
/// <param name="NotExcluded">
/// The most that materials may hold of it besides, of which no statement says whether they do [%]; 0 where every material that could
/// hold it is accounted for.
/// </param>
/// <param name="Unstated">Those materials.</param>
public sealed record SubstanceAmount(Amount Amount, IReadOnlyList<Contribution> Contributions, decimal NotExcluded, IReadOnlyList<string> Unstated);
