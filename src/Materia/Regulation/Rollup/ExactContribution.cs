namespace Materia.Regulation.Rollup;

/// <summary>What one line brings of a substance, every digit kept.</summary>
/// <param name="Line">The line.</param>
/// <param name="Share">The share of the substance in its material [%], counted as the rule counts it.</param>
/// <param name="Amount">What comes of it in the formula [%].</param>
internal readonly record struct ExactContribution(RegulatedLine Line, Amount Share, Amount Amount)
{
    /// <summary>The contribution to show.</summary>
    public Contribution Shown() => new(Line.Name, Line.Percent, Share.Trimmed(), Amount.Trimmed());
}
