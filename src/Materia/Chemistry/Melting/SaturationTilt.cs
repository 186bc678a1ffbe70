namespace Materia.Chemistry.Melting;

/// <summary>Makes a mixture of triacylglycerols more or less saturated by one factor for each saturated chain, the least change that does it.</summary>
internal static class SaturationTilt
{
    private const double Widest = 20;
    private const int Bisections = 50;

    /// <summary>Multiplies the shares by e^(λ·n), n the saturated chains, so that the saturated fraction of all chains changes by <paramref name="change"/>; adding up to 1 before and after.</summary>
    public static Dictionary<Triacylglycerol, double> Of(Dictionary<Triacylglycerol, double> fats, double change)
    {
        Span<double> shares = stackalloc double[4];
        foreach (var (fat, share) in fats)
        {
            shares[3 - fat.UnsaturatedChains] += share;
        }

        var aim = Saturation(shares, 0) + change;
        double low = -Widest, high = Widest;
        for (var i = 0; i < Bisections; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Saturation(shares, middle) < aim ? (middle, high) : (low, middle);
        }

        var lambda = (low + high) / 2;
        double sum = 0;
        for (var n = 0; n < shares.Length; n++)
        {
            sum += shares[n] * Math.Exp(lambda * n);
        }

        return fats.ToDictionary(p => p.Key, p => p.Value * Math.Exp(lambda * (3 - p.Key.UnsaturatedChains)) / sum);
    }

    private static double Saturation(ReadOnlySpan<double> shares, double lambda)
    {
        double sum = 0, saturated = 0;
        for (var n = 0; n < shares.Length; n++)
        {
            var weight = shares[n] * Math.Exp(lambda * n);
            sum += weight;
            saturated += n * weight;
        }

        return saturated / (3 * sum);
    }
}
