namespace Materia.Chemistry.Melting;

/// <summary>
/// Melting points of the most stable beta form that were measured and go before the correlation: arishima-1991, read in
/// the abstract.
/// </summary>
public static class MeasuredTriacylglycerols
{
    private static readonly Chain P = new(16, ChainKind.Saturated);
    private static readonly Chain S = new(18, ChainKind.Saturated);
    private static readonly Chain O = new(18, ChainKind.CisMonoene);

    private static readonly Dictionary<Triacylglycerol, double> Beta = new()
    {
        [new(S, O, S)] = 43.0,
        [new(P, O, P)] = 36.7,
        [new(P, O, S)] = 35.9,
    };

    /// <summary>The melting point of the beta form [Cel] with where it was seen, or <see langword="null"/>.</summary>
    public static (double Celsius, Seen Seen)? BetaMeltingPoint(Triacylglycerol fat) =>
        Beta.TryGetValue(fat, out var celsius) ? (celsius, new("arishima-1991", Catalogue.Evidence.Published)) : null;
}
