using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>
/// The triacylglycerols of a fat as printed, filled up to the whole with generated ones: what a table names keeps its printed share,
/// and the rest is spread over the generated species that it does not name.
/// </summary>
internal static class PublishedComposition
{
    /// <summary>Least share of all triacylglycerols that a table must name to be used [%]; below it the generated composition says more.</summary>
    private const decimal LeastNamed = 75;

    /// <summary>The table of <paramref name="ingredient"/> that computations use, or <see langword="null"/> when none names enough.</summary>
    public static TriacylglycerolProfile? Find(Ingredient ingredient)
    {
        TriacylglycerolProfile? found = null;
        foreach (var profile in ingredient.TriacylglycerolProfiles)
        {
            if (profile.Shares.Sum(s => s.Typical ?? 0) >= LeastNamed && (found is null || profile.Used))
            {
                found = profile;
            }
        }

        return found;
    }

    /// <summary>Puts the printed shares in the place of the generated ones; mole fractions in and out, adding up to 1.</summary>
    public static Dictionary<Triacylglycerol, double> Fill(TriacylglycerolProfile printed, Dictionary<Triacylglycerol, double> generated)
    {
        var named = new Dictionary<Triacylglycerol, double>();
        foreach (var share in printed.Shares)
        {
            // Two printed as one sum count half each; such sums are of the liquid species.
            var species = share.Species.Split(TriacylglycerolSpecies.Joint);
            foreach (var one in species)
            {
                if (TriacylglycerolName.Parse(one) is { } fat && share.Typical is > 0 and var percent)
                {
                    named[fat] = named.GetValueOrDefault(fat) + ((double)percent / 100 / species.Length);
                }
            }
        }

        // Tables do not tell positions apart, so isomers of a named species are named with it.
        var isomers = named.Keys.Select(Chains).ToHashSet();
        var others = generated.Where(p => !isomers.Contains(Chains(p.Key))).ToList();
        var (sum, left) = (named.Values.Sum(), others.Sum(p => p.Value));
        var rest = Math.Max(0, 1 - sum);
        var whole = left > 0 ? Math.Max(sum, 1) : sum;
        foreach (var (fat, amount) in others)
        {
            named[fat] = amount / left * rest;
        }

        return named.ToDictionary(p => p.Key, p => p.Value / whole);
    }

    private static (Chain, Chain, Chain) Chains(Triacylglycerol fat)
    {
        Chain[] chains = [fat.Sn1, fat.Sn2, fat.Sn3];
        Array.Sort(chains, static (a, b) => (a.Carbons, (int)a.Kind).CompareTo((b.Carbons, (int)b.Kind)));
        return (chains[0], chains[1], chains[2]);
    }
}
