using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Matching;

/// <summary>A measured fatty-acid profile, added up by chain length and double bonds.</summary>
internal sealed class MeasuredProfile
{
    /// <summary>Reads a profile whose symbols <see cref="ProfileMatch.Nearest"/> has accepted.</summary>
    public MeasuredProfile(IReadOnlyDictionary<string, double> measured, Release release)
    {
        var chains = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (symbol, percent) in measured)
        {
            var chain = ChainOf(symbol, release);
            chains[chain] = chains.GetValueOrDefault(chain) + percent;
        }

        Chains = [.. chains.Keys];
        Percent = [.. chains.Values];
        Sum = Percent.Sum();
    }

    /// <summary>The chains that the measurement names.</summary>
    public string[] Chains { get; }

    /// <summary>Their shares of all acids [%].</summary>
    public double[] Percent { get; }

    /// <summary>What the shares add up to [%].</summary>
    public double Sum { get; }

    /// <summary>Carbons and double bonds of a symbol; a bare chain is its own.</summary>
    public static string ChainOf(string symbol, Release release) =>
        release.FindFattyAcid(symbol) is { } acid ? AcidTraits.Chain(acid) : symbol;

    /// <summary>The shares of the named chains in an oil [%].</summary>
    public double[] Of(AcidShares shares) =>
        [.. Chains.Select(chain => Array.Find(shares.Chains, c => c.Chain == chain).Share.Value)];

    /// <summary>The share that differs: half the sum of the absolute differences over the named chains [%].</summary>
    public double Differing(double[] percent)
    {
        double sum = 0;
        for (var i = 0; i < Percent.Length; i++)
        {
            sum += Math.Abs(Percent[i] - percent[i]);
        }

        return sum / 2;
    }

    /// <summary>The chains of an oil that the measurement does not name and that matter, by falling share.</summary>
    public IReadOnlyList<UncomparedAcid> Uncompared(AcidShares shares) =>
    [
        .. shares.Chains.Where(c => c.Share.Value >= 1 && Array.IndexOf(Chains, c.Chain) < 0)
            .OrderByDescending(c => c.Share.Value)
            .Select(c => new UncomparedAcid(c.Chain, c.Share.Value)),
    ];
}
