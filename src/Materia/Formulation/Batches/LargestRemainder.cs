namespace Materia.Formulation.Batches;

/// <summary>
/// Divides a whole number of steps among shares so that the parts add up exactly: each share gets the whole steps that it is
/// owed, and the steps left over go to the largest remainders, ties to the larger share, then to the earlier one. Each part is
/// less than one step away from what it is owed.
/// </summary>
public static class LargestRemainder
{
    /// <summary>Divides <paramref name="steps"/> by <paramref name="amounts"/>.</summary>
    /// <param name="amounts">The shares, none negative, not all nought.</param>
    /// <param name="steps">The steps to give out, not negative.</param>
    /// <returns>The steps of each share, in order; their sum is <paramref name="steps"/>.</returns>
    /// <exception cref="ArgumentException">An amount is negative, or all are nought.</exception>
    /// <exception cref="OverflowException">An amount times the steps is over 7 × 10^28.</exception>
    public static IReadOnlyList<long> Apportion(IReadOnlyList<decimal> amounts, long steps)
    {
        ArgumentNullException.ThrowIfNull(amounts);
        ArgumentOutOfRangeException.ThrowIfNegative(steps);
        var total = amounts.Sum();
        if (total <= 0 || amounts.Any(a => a < 0))
        {
            throw new ArgumentException("The amounts must not be negative, nor all nought.", nameof(amounts));
        }

        var parts = new long[amounts.Count];
        var remainders = new decimal[amounts.Count];
        var left = steps;
        for (var i = 0; i < parts.Length; i++)
        {
            // Multiplying first keeps ties exact.
            var owed = amounts[i] * steps / total;
            parts[i] = (long)decimal.Floor(owed);
            remainders[i] = owed - parts[i];
            left -= parts[i];
        }

        var order = Enumerable.Range(0, parts.Length).OrderByDescending(i => remainders[i]).ThenByDescending(i => amounts[i]);
        foreach (var i in order.Take((int)left))
        {
            parts[i]++;
        }

        return parts;
    }
}
