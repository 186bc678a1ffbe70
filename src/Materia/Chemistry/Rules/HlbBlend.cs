namespace Materia.Chemistry.Rules;

/// <summary>Means of hydrophile-lipophile balances by mass.</summary>
public static class HlbBlend
{
    /// <summary>
    /// Σ w HLB / Σ w, for the HLB that an oil phase requires or that emulsifiers offer (<c>griffin-1949</c>; checked against
    /// <c>ocl-2022-hlb</c> to 0.03). Exact as arithmetic; as guidance good to about one unit.
    /// </summary>
    /// <param name="shares">Mass [any unit] and HLB [1] of each.</param>
    /// <returns>The mean [1]; not a number when there is no mass.</returns>
    /// <example>Polysorbate 80 with 72.2 % of HLB 15 and sorbitan oleate with 27.8 % of HLB 4.3: 12.0.</example>
    public static double Mean(IEnumerable<(double Mass, double Hlb)> shares)
    {
        ArgumentNullException.ThrowIfNull(shares);
        double mass = 0;
        double sum = 0;
        foreach (var (share, hlb) in shares)
        {
            mass += share;
            sum += share * hlb;
        }

        return sum / mass;
    }

    /// <summary>The share of the emulsifier with the higher HLB in a pair that offers what is required: (required − low)/(high − low).</summary>
    /// <param name="required">What the oil phase requires [1].</param>
    /// <param name="high">The higher HLB [1].</param>
    /// <param name="low">The lower HLB [1].</param>
    /// <returns>The share, 0 to 1; <see langword="null"/> where no ratio of the two meets the need.</returns>
    /// <example>12 from 15 and 4.3: 0.72.</example>
    public static double? ShareOfHigh(double required, double high, double low) =>
        high > low && required >= low && required <= high ? (required - low) / (high - low) : null;
}
