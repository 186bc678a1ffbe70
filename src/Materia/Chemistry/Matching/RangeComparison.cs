using Materia.Catalogue;

namespace Materia.Chemistry.Matching;

/// <summary>A measured profile beside the published range of a fat.</summary>
/// <param name="Compared">How many acids of the range were measured.</param>
/// <param name="Outside">Those outside their range.</param>
/// <param name="Missing">Acids of the range that the measurement does not name.</param>
internal sealed record RangeComparison(int Compared, IReadOnlyList<AcidOutside> Outside, IReadOnlyList<string> Missing)
{
    /// <summary>The first range of the acids that the catalogue holds for a fat, or <see langword="null"/>.</summary>
    public static FattyAcidProfile? RangeOf(Ingredient ingredient) =>
        ingredient.FattyAcidProfiles.FirstOrDefault(p => p.Kind == ProfileKind.Range && p.Of == ProfilePart.Acids);

    /// <summary>Compares acid by acid.</summary>
    public static RangeComparison Of(FattyAcidProfile range, MeasuredProfile profile, IReadOnlyDictionary<string, double> measured, Release release)
    {
        var outside = new List<AcidOutside>();
        var missing = new List<string>();
        foreach (var share in range.Shares)
        {
            if (Measured(share.Acid) is not { } percent)
            {
                missing.Add(share.Acid);
            }
            else if ((share.Low is { } low && percent < (double)low) || (share.High is { } high && percent > (double)high))
            {
                outside.Add(new(share.Acid, percent, share.Low, share.High, share.Source, share.Locator));
            }
        }

        return new(range.Shares.Count - missing.Count, outside, missing);

        double? Measured(string acid)
        {
            if (measured.TryGetValue(acid, out var own))
            {
                return own;
            }

            // A total stands for the only acid of its chain that the range names; with two of them nobody can tell which is meant.
            var chain = MeasuredProfile.ChainOf(acid, release);
            var at = Array.IndexOf(profile.Chains, chain);
            return at >= 0 && range.Shares.Count(s => MeasuredProfile.ChainOf(s.Acid, release) == chain) == 1 ? profile.Percent[at] : null;
        }
    }
}
