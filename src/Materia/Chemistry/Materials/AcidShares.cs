using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>
/// The shares of one ingredient's acids with the ranges that its standard guarantees [%]: row by row, by chain, by saturation, and as
/// the oxidisability index. Each range is tightened by what the other acids must take, and reaches the sample's own value.
/// </summary>
internal sealed class AcidShares
{
    public AcidShares(AcidProfile profile, AcidRange? range)
    {
        Profile = profile;
        Rows = new Interval[profile.Acids.Length];
        ChainOf = [.. profile.Acids.Select(AcidTraits.Chain)];
        var chains = new List<(string Chain, Interval Share)>();
        for (var i = 0; i < Rows.Length; i++)
        {
            var acid = profile.Acids[i];
            var chain = ChainOf[i];
            var alone = ChainOf.Count(c => c == chain) == 1;
            Rows[i] = Row(100 * profile.Shares[i], acid, chain, alone, range);
            if (!chains.Exists(c => c.Chain == chain))
            {
                chains.Add((chain, Sum(profile, range, a => AcidTraits.Chain(a) == chain)));
            }
        }

        Chains = [.. chains];
        Saturated = Sum(profile, range, a => a.DoubleBonds == 0);
        Monounsaturated = Sum(profile, range, a => a.DoubleBonds == 1);
        Polyunsaturated = Sum(profile, range, a => a.DoubleBonds > 1);
        var cox = Interval.Exact(profile.CoxValue);
        Cox = range?.Bound(a => Rules.CoxIndex.Weight(a.DoubleBonds) / 100) is var (low, high) ? cox.Reaching(low, high) : cox;
    }

    public AcidProfile Profile { get; }

    /// <summary>The share of each acid, in the order of the profile.</summary>
    public Interval[] Rows { get; }

    /// <summary>The chain of each acid, in the order of the profile.</summary>
    public string[] ChainOf { get; }

    /// <summary>The shares by chain.</summary>
    public (string Chain, Interval Share)[] Chains { get; }

    public Interval Saturated { get; }

    public Interval Monounsaturated { get; }

    public Interval Polyunsaturated { get; }

    /// <summary>The oxidisability index.</summary>
    public Interval Cox { get; }

    /// <summary>
    /// A row takes the standard's limits for the same symbol, or, where it is the only one of its chain, for the chain as a whole: an
    /// analysis that says <c>18:1</c> and a standard that says <c>18:1n-9</c> mean nearly the same then.
    /// </summary>
    private static Interval Row(double percent, FattyAcid acid, string chain, bool alone, AcidRange? range)
    {
        var share = Interval.Exact(percent);
        if (range is null)
        {
            return share;
        }

        Func<FattyAcid, double>? pick = null;
        if (Array.Exists(range.Acids, a => a.Symbol == acid.Symbol))
        {
            pick = a => a.Symbol == acid.Symbol ? 1 : 0;
        }
        else if (alone && Array.Exists(range.Acids, a => AcidTraits.Chain(a) == chain))
        {
            pick = a => AcidTraits.Chain(a) == chain ? 1 : 0;
        }

        return pick is not null && range.Bound(pick) is var (low, high) ? share.Reaching(low, high) : share;
    }

    private static Interval Sum(AcidProfile profile, AcidRange? range, Func<FattyAcid, bool> belongs)
    {
        double percent = 0;
        for (var i = 0; i < profile.Acids.Length; i++)
        {
            percent += belongs(profile.Acids[i]) ? 100 * profile.Shares[i] : 0;
        }

        var share = Interval.Exact(percent);
        return range is not null && range.Bound(a => belongs(a) ? 1 : 0) is var (low, high) && Array.Exists(range.Acids, a => belongs(a))
            ? share.Reaching(low, high)
            : share;
    }
}
