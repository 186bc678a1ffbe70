namespace Materia.Chemistry.Melting;

/// <summary>
/// The least share of a wax that gels an oil [% by mass]: rice bran 1, candelilla 2, carnauba 4 in canola oil (blake-2014,
/// read in the abstract), beeswax 3 in olive and peanut oil (beeswax-oleogels-2024, read in the abstract).
/// </summary>
public static class WaxGel
{
    private static readonly Dictionary<string, double> LeastPercent = new(StringComparer.Ordinal)
    {
        ["rice-bran-wax"] = 1,
        ["sunflower-wax"] = 1,
        ["candelilla-wax"] = 2,
        ["carnauba-wax"] = 4,
        ["beeswax"] = 3,
    };

    /// <summary>The waxes of a blend that are above their least share of the fat phase.</summary>
    /// <param name="blend">The blend.</param>
    /// <param name="fatMass">The share of the formula that melts [1].</param>
    public static IReadOnlyList<string> GellingWaxes(Blend blend, double fatMass) =>
    [
        .. blend.Components
            .GroupBy(c => c.Ingredient.Id, c => c.MassFraction)
            .Where(g => LeastPercent.TryGetValue(g.Key, out var least) && 100 * g.Sum() / blend.TotalMass >= least * fatMass)
            .Select(g => g.Key),
    ];
}
