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

    /// <summary>The shares of a table that computations use, by the names it prints [%].</summary>
    public static IReadOnlyList<(string Species, double Percent)> Usual(TriacylglycerolProfile printed) =>
        [.. printed.Shares.Where(s => s.Typical > 0).Select(s => (s.Species, (double)s.Typical!.Value))];

    /// <summary>
    /// The shares of a table at one end of what print allows [%]: the low and high of its own shares and the shares of the fat's other
    /// tables. Species of two saturated chains and more grow and the others shrink, or the other way round; <see langword="null"/>
    /// when no range is printed.
    /// </summary>
    public static IReadOnlyList<(string Species, double Percent)>? At(Firmness firmness, Ingredient ingredient, TriacylglycerolProfile printed)
    {
        var usual = Usual(printed);
        double[] shares = [.. usual.Select(s => s.Percent)], low = [.. shares], high = [.. shares];
        foreach (var share in ingredient.TriacylglycerolProfiles.SelectMany(p => p.Shares))
        {
            var i = usual.Index().FirstOrDefault(u => u.Item.Species == share.Species, (-1, default)).Index;
            if (i >= 0)
            {
                low[i] = Math.Min(low[i], (double)(share.Low ?? share.Typical ?? share.High!.Value));
                high[i] = Math.Max(high[i], (double)(share.High ?? share.Typical ?? share.Low!.Value));
            }
        }

        var moved = new ShareShift(shares, low, high).Most(i => IsFirm(usual[i].Species) == (firmness == Firmness.Firmest), static _ => 0, double.PositiveInfinity);
        return moved is null ? null : [.. usual.Select((u, i) => (u.Species, moved[i]))];
    }

    /// <summary>Puts the printed shares in the place of the generated ones; mole fractions in and out, adding up to 1.</summary>
    public static Dictionary<Triacylglycerol, double> Fill(IReadOnlyList<(string Species, double Percent)> printed, Dictionary<Triacylglycerol, double> generated)
    {
        var named = new Dictionary<Triacylglycerol, double>();
        foreach (var (joint, percent) in printed)
        {
            // Two printed as one sum count half each; such sums are of the liquid species.
            var species = Read(joint);
            foreach (var fat in species)
            {
                named[fat] = named.GetValueOrDefault(fat) + (percent / 100 / species.Count);
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

    private static bool IsFirm(string joint) => Read(joint).All(f => f.UnsaturatedChains <= 1);

    private static List<Triacylglycerol> Read(string joint) =>
        [.. joint.Split(TriacylglycerolSpecies.Joint).Select(TriacylglycerolName.Parse).OfType<Triacylglycerol>()];

    private static (Chain, Chain, Chain) Chains(Triacylglycerol fat)
    {
        Chain[] chains = [fat.Sn1, fat.Sn2, fat.Sn3];
        Array.Sort(chains, static (a, b) => (a.Carbons, (int)a.Kind).CompareTo((b.Carbons, (int)b.Kind)));
        return (chains[0], chains[1], chains[2]);
    }
}
