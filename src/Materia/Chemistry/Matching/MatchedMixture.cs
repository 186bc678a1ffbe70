using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Matching;

/// <summary>Two fats that together explain a measured profile. Method <c>profile-mixture</c>.</summary>
public sealed record MatchedMixture
{
    /// <summary>A mixture must leave at most this share of what the nearest single fat leaves [1].</summary>
    public const double ClearlyBetter = 0.5;

    /// <summary>And the nearest single fat must leave at least this much, below which samples of one fat differ anyway [%].</summary>
    public const double LeastSingle = 4;

    /// <summary>A share below this [1] is no mixture worth naming.</summary>
    private const double LeastShare = 0.05;

    /// <summary>The two fats with their shares of all fatty acids.</summary>
    public required IReadOnlyList<MixedFat> Parts { get; init; }

    /// <summary>The share of the fatty acids that still differs [%].</summary>
    public required double PercentDiffering { get; init; }

    /// <summary>The key of the method.</summary>
    public required string Method { get; init; }

    /// <summary>
    /// For every pair the share x of the first that makes Σ(m − x p − (1 − x) q)² least, which for two fats is exact; those are kept that
    /// leave clearly less than the best single fat does.
    /// </summary>
    internal static IReadOnlyList<MatchedMixture> Find(IEnumerable<(Ingredient Ingredient, AcidShares Shares)> candidates, MeasuredProfile profile, int limit)
    {
        var fats = candidates.Select(c => (c.Ingredient, Percent: profile.Of(c.Shares))).ToList();
        var single = fats.Count == 0 ? 0 : fats.Min(f => profile.Differing(f.Percent));
        var found = new List<(int A, int B, double Share, double Differing)>();
        if (single < LeastSingle)
        {
            return [];
        }

        var mixed = new double[profile.Percent.Length];
        for (var a = 0; a < fats.Count; a++)
        {
            for (var b = a + 1; b < fats.Count; b++)
            {
                var share = BestShare(profile.Percent, fats[a].Percent, fats[b].Percent);
                if (share < LeastShare || share > 1 - LeastShare)
                {
                    continue;
                }

                for (var i = 0; i < mixed.Length; i++)
                {
                    mixed[i] = (share * fats[a].Percent[i]) + ((1 - share) * fats[b].Percent[i]);
                }

                var differing = profile.Differing(mixed);
                if (differing <= ClearlyBetter * single)
                {
                    found.Add((a, b, share, differing));
                }
            }
        }

        return [.. found.OrderBy(f => f.Differing).ThenBy(f => fats[f.A].Ingredient.Id, StringComparer.Ordinal).ThenBy(f => fats[f.B].Ingredient.Id, StringComparer.Ordinal).Take(limit)
            .Select(f => new MatchedMixture
            {
                Parts = [.. new[] { Part(fats[f.A].Ingredient, f.Share), Part(fats[f.B].Ingredient, 1 - f.Share) }.OrderByDescending(p => p.Percent)],
                PercentDiffering = f.Differing,
                Method = ProfileMatching.MixtureMethodId,
            })];
    }

    /// <summary>The share of p, from 0 to 1, for which x p + (1 − x) q comes nearest to m by least squares.</summary>
    internal static double BestShare(double[] m, double[] p, double[] q)
    {
        double across = 0, square = 0;
        for (var i = 0; i < m.Length; i++)
        {
            across += (m[i] - q[i]) * (p[i] - q[i]);
            square += (p[i] - q[i]) * (p[i] - q[i]);
        }

        return square > 0 ? Math.Clamp(across / square, 0, 1) : 0;
    }

    private static MixedFat Part(Ingredient ingredient, double share) => new(ingredient.Id, ingredient.CommonName(), 100 * share);
}

/// <summary>One part of a mixture.</summary>
/// <param name="Id">The id of the fat.</param>
/// <param name="Name">Its common name.</param>
/// <param name="Percent">Its share of all fatty acids [%].</param>
public sealed record MixedFat(string Id, string Name, double Percent);
