namespace Materia.Chemistry.Rules;

/// <summary>
/// The least and greatest value of a property over every composition that keeps to the limits of each acid and adds up to the whole.
/// The property is linear in the shares, so the bound is exact: start at the lower limits and spend what is left where it counts least
/// (or most). It takes n log n steps.
/// </summary>
public static class GuaranteedBounds
{
    /// <summary>Bounds y = Σ f·x over low ≤ x ≤ high with Σ x = <paramref name="sum"/>.</summary>
    /// <param name="factors">The factor f of each share.</param>
    /// <param name="low">The lower limits.</param>
    /// <param name="high">The upper limits, none below its lower one.</param>
    /// <param name="sum">What the shares add up to.</param>
    /// <returns>The bounds, or <see langword="null"/> when no composition keeps to the limits.</returns>
    /// <exception cref="ArgumentException">The lists differ in length, or an upper limit is below its lower one.</exception>
    public static (double Low, double High)? Linear(ReadOnlySpan<double> factors, ReadOnlySpan<double> low, ReadOnlySpan<double> high, double sum)
    {
        var spare = Spare(factors.Length, low, high, sum);
        if (spare is null)
        {
            return null;
        }

        Span<int> order = factors.Length <= 64 ? stackalloc int[factors.Length] : new int[factors.Length];
        Sort(factors, order);
        return (Spend(factors, low, high, order, spare.Value, fromTop: false), Spend(factors, low, high, order, spare.Value, fromTop: true));
    }

    /// <summary>
    /// Bounds y = Σ a·x / Σ b·x under the same limits, for means by moles. Each step bounds Σ (a − y·b)·x and takes the ratio at that
    /// corner; it ends when the ratio stands still, which is the exact bound (Dinkelbach's iteration).
    /// </summary>
    /// <param name="numerators">The factors a.</param>
    /// <param name="denominators">The factors b, all above nought.</param>
    /// <param name="low">The lower limits.</param>
    /// <param name="high">The upper limits, none below its lower one.</param>
    /// <param name="sum">What the shares add up to.</param>
    /// <returns>The bounds, or <see langword="null"/> when no composition keeps to the limits.</returns>
    /// <exception cref="ArgumentException">The lists differ in length, or an upper limit is below its lower one.</exception>
    public static (double Low, double High)? Ratio(ReadOnlySpan<double> numerators, ReadOnlySpan<double> denominators, ReadOnlySpan<double> low, ReadOnlySpan<double> high, double sum)
    {
        var spare = Spare(numerators.Length, low, high, sum);
        return spare is null
            ? null
            : (Extreme(numerators, denominators, low, high, spare.Value, fromTop: false), Extreme(numerators, denominators, low, high, spare.Value, fromTop: true));
    }

    private static double Extreme(ReadOnlySpan<double> numerators, ReadOnlySpan<double> denominators, ReadOnlySpan<double> low, ReadOnlySpan<double> high, double spare, bool fromTop)
    {
        var n = numerators.Length;
        Span<double> parametric = n <= 64 ? stackalloc double[n] : new double[n];
        Span<int> order = n <= 64 ? stackalloc int[n] : new int[n];
        double ratio = 0;

        // Each step strictly improves the ratio over finitely many corners; in practice three or four are enough.
        for (var step = 0; step < 50; step++)
        {
            for (var i = 0; i < n; i++)
            {
                parametric[i] = numerators[i] - (ratio * denominators[i]);
            }

            Sort(parametric, order);
            var next = Spend(numerators, low, high, order, spare, fromTop) / Spend(denominators, low, high, order, spare, fromTop);
            if (Math.Abs(next - ratio) <= 1e-12 * Math.Abs(next))
            {
                return next;
            }

            ratio = next;
        }

        return ratio;
    }

    private static double? Spare(int count, ReadOnlySpan<double> low, ReadOnlySpan<double> high, double sum)
    {
        if (low.Length != count || high.Length != count)
        {
            throw new ArgumentException("Factors and limits must be equally many.", nameof(low));
        }

        double least = 0;
        double most = 0;
        for (var i = 0; i < count; i++)
        {
            if (!(low[i] <= high[i]))
            {
                throw new ArgumentException("An upper limit is below its lower one.", nameof(high));
            }

            least += low[i];
            most += high[i];
        }

        // Limits are printed to one decimal; a hair's breadth of summing error is not an impossible composition.
        return sum < least - 1e-9 || sum > most + 1e-9 ? null : Math.Max(0, sum - least);
    }

    private static void Sort(ReadOnlySpan<double> factors, Span<int> order)
    {
        Span<double> keys = factors.Length <= 64 ? stackalloc double[factors.Length] : new double[factors.Length];
        factors.CopyTo(keys);
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        keys.Sort(order);
    }

    private static double Spend(ReadOnlySpan<double> factors, ReadOnlySpan<double> low, ReadOnlySpan<double> high, ReadOnlySpan<int> order, double spare, bool fromTop)
    {
        double value = 0;
        for (var i = 0; i < order.Length; i++)
        {
            var k = order[fromTop ? order.Length - 1 - i : i];
            var given = Math.Min(spare, high[k] - low[k]);
            spare -= given;
            value += factors[k] * (low[k] + given);
        }

        return value;
    }
}
