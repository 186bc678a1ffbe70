namespace Materia.Search.Ranges;

/// <summary>
/// The density of air-free water at the temperatures that relative densities refer to, to four decimals, which is finer than any
/// stored figure. Values as in M. Tanaka et al., Metrologia 38 (2001) 301, recalled.
/// </summary>
internal static class WaterDensity
{
    /// <summary>The density [g/mL] at <paramref name="temperature"/> [Cel]; <see langword="null"/> where it isn't stated or is none of the usual ones.</summary>
    public static decimal? At(decimal? temperature) => temperature switch
    {
        4m => 1.0000m,
        15m => 0.9991m,
        15.5m => 0.9990m,
        20m => 0.9982m,
        25m => 0.9970m,
        _ => null,
    };
}
