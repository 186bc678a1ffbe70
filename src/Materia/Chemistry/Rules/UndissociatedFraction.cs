namespace Materia.Chemistry.Rules;

/// <summary>The share of a weak acid that is not dissociated, which is the form that enters a microbe.</summary>
public static class UndissociatedFraction
{
    /// <summary>
    /// f = 1/(1 + 10^(pH − pKa)) (Henderson and Hasselbalch). Holds for one acid group in dilute water; the ion may act a little too,
    /// so that f is on the safe side (<c>anderson-chow-1967</c>).
    /// </summary>
    /// <param name="ph">The pH [1].</param>
    /// <param name="pka">The negative decimal logarithm of the dissociation constant [1].</param>
    /// <returns>The share, 0 to 1 [1].</returns>
    /// <example>Benzoic acid, pKa 4.2, at pH 5: 0.1368.</example>
    public static double Of(double ph, double pka) => 1 / (1 + Math.Pow(10, ph - pka));
}
