using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>
/// Which acids sit in the middle of the glycerol: by the ratio that the catalogue holds for the fat (saturated fraction at sn-2 over
/// saturated fraction overall; 1 for an interesterified fat), else by a rule for its sort. Lauric fats are rich in 12:0 there, as coconut is; animal fats are
/// taken as random; other fats of plants have a tenth of the saturated chains that chance would put there, a choice of ours.
/// </summary>
public static class MiddlePosition
{
    private const double Seeds = 0.10;
    private const double Random = 1;

    /// <summary>Middle over overall mole fraction of each acid of coconut oil (breckenridge-1978, recalled), scaled to any lauric fat.</summary>
    private static readonly Dictionary<int, double> LauricEnrichment = new()
    {
        [8] = 2 / 11.5,
        [10] = 5 / 7.7,
        [12] = 78 / 53.0,
        [14] = 8 / 17.9,
        [16] = 1 / 7.5,
        [18] = 0.3 / 2.1,
    };

    /// <summary>The middle composition of <paramref name="ingredient"/>, as mole fractions in the order of <paramref name="overall"/>.</summary>
    public static double[] Of(Ingredient ingredient, IReadOnlyList<(Chain Chain, double Fraction)> overall)
    {
        if (StoredFigures.Find(ingredient, Property.MiddlePositionSaturation) is { } stored)
        {
            return PositionalDistribution.Middle(overall, (double)stored.Central());
        }

        return IsLauric(overall)
            ? Lauric(overall)
            : PositionalDistribution.Middle(overall, ingredient.Origin?.From == OriginKind.Animal ? Random : Seeds);
    }

    private static bool IsLauric(IReadOnlyList<(Chain Chain, double Fraction)> overall) =>
        overall.Where(p => p.Chain.IsSaturated && p.Chain.Carbons is 12 or 14).Sum(p => p.Fraction) > 0.4;

    private static double[] Lauric(IReadOnlyList<(Chain Chain, double Fraction)> overall)
    {
        var middle = new double[overall.Count];
        for (var i = 0; i < middle.Length; i++)
        {
            var (chain, fraction) = overall[i];
            var factor = chain.IsSaturated ? LauricEnrichment.GetValueOrDefault(chain.Carbons, 0.14) : 0.6;
            middle[i] = Math.Min(fraction * factor, 3 * fraction);
        }

        var sum = middle.Sum();
        return [.. middle.Select(m => m / sum)];
    }
}
