using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>The running sums of a fatty-acid composition, row by row, by chain and by saturation.</summary>
internal sealed class AcidSums
{
    /// <summary>Decimals of a percentage in the result; analyses carry one or two.</summary>
    public const int Digits = 3;

    private readonly Dictionary<string, (FattyAcid Acid, Interval Sum)> acids = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (FattyAcid Acid, Interval Sum)> alcohols = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (List<string> Of, Interval Sum)> chains = new(StringComparer.Ordinal);

    public Interval Saturated { get; private set; }

    public Interval Monounsaturated { get; private set; }

    public Interval Polyunsaturated { get; private set; }

    /// <summary>True when a chain's bare total stands beside one of its isomers.</summary>
    public bool Undifferentiated
    {
        get
        {
            foreach (var (chain, row) in chains)
            {
                if (row.Of.Count > 1 && row.Of.Contains(chain))
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>Adds every component with its weight among the acids, and among the alcohols.</summary>
    public void Add(Blend blend, double acidMass, double alcoholMass)
    {
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var mass = blend.Components[i].MassFraction;
            var material = blend.Materials[i];
            if (material.AcidMass > 0 && mass > 0)
            {
                AddAcids(material.Shares!, mass * material.AcidMass / acidMass);
            }

            if (material.IsLipid && material.AlcoholMass > 0 && mass > 0)
            {
                var profile = material.Alcohols!;
                for (var k = 0; k < profile.Acids.Length; k++)
                {
                    Add(alcohols, profile.Acids[k], Interval.Exact(100 * profile.Shares[k]), mass * material.AlcoholMass / alcoholMass);
                }
            }
        }
    }

    public List<FattyAcidRow> AcidRows() => Rows(acids);

    public List<FattyAcidRow> AlcoholRows() => Rows(alcohols);

    public List<ChainTotal> ChainRows()
    {
        var rows = new List<ChainTotal>(chains.Count);
        foreach (var (chain, (of, sum)) in chains)
        {
            of.Sort(StringComparer.Ordinal);
            rows.Add(new ChainTotal(chain, of, Round(sum.Value), Round(sum.Low), Round(sum.High)));
        }

        rows.Sort((a, b) => a.Percent != b.Percent ? b.Percent.CompareTo(a.Percent) : string.CompareOrdinal(a.Chain, b.Chain));
        return rows;
    }

    private static List<FattyAcidRow> Rows(Dictionary<string, (FattyAcid Acid, Interval Sum)> sums)
    {
        var rows = new List<FattyAcidRow>(sums.Count);
        foreach (var (symbol, (acid, sum)) in sums)
        {
            rows.Add(new FattyAcidRow(symbol, acid.Name, Round(sum.Value), Round(sum.Low), Round(sum.High)));
        }

        rows.Sort((a, b) => a.Percent != b.Percent ? b.Percent.CompareTo(a.Percent) : string.CompareOrdinal(a.Acid, b.Acid));
        return rows;
    }

    private static bool Add(Dictionary<string, (FattyAcid Acid, Interval Sum)> sums, FattyAcid acid, Interval share, double weight)
    {
        var known = sums.TryGetValue(acid.Symbol, out var row);
        sums[acid.Symbol] = (acid, Plus(row.Sum, share, weight));
        return !known;
    }

    private static Interval Plus(Interval sum, Interval share, double weight) =>
        new(sum.Value + (weight * share.Value), sum.Low + (weight * share.Low), sum.High + (weight * share.High));

    private static double Round(double percent) => Math.Round(percent, Digits);

    private void AddAcids(AcidShares shares, double weight)
    {
        foreach (var (chain, share) in shares.Chains)
        {
            var row = chains.TryGetValue(chain, out var known) ? known : ([], default);
            chains[chain] = (row.Of, Plus(row.Sum, share, weight));
        }

        for (var k = 0; k < shares.Rows.Length; k++)
        {
            var acid = shares.Profile.Acids[k];
            if (Add(acids, acid, shares.Rows[k], weight))
            {
                chains[shares.ChainOf[k]].Of.Add(acid.Symbol);
            }
        }

        Saturated = Plus(Saturated, shares.Saturated, weight);
        Monounsaturated = Plus(Monounsaturated, shares.Monounsaturated, weight);
        Polyunsaturated = Plus(Polyunsaturated, shares.Polyunsaturated, weight);
    }
}
