using Materia.Catalogue;

namespace Materia.Search.Ranges;

/// <summary>The fatty acids and fatty alcohols of an ingredient as its used sample profiles give them.</summary>
internal sealed class AcidShares
{
    private readonly IReadOnlyList<FattyAcidShare> shares;

    private AcidShares(IReadOnlyList<FattyAcidShare> shares) => this.shares = shares;

    /// <summary>The used sample of the acids and, for a wax ester, that of the alcohols; their symbols differ.</summary>
    public static AcidShares Of(Ingredient ingredient) =>
        new([.. ingredient.FattyAcidProfiles
            .Where(p => p.Kind == ProfileKind.Sample)
            .GroupBy(p => p.Of)
            .SelectMany(same => same.Count() == 1 ? same : same.Where(p => p.Used))
            .SelectMany(p => p.Shares)]);

    /// <summary>
    /// The share that answers <paramref name="asked"/>, or <see langword="null"/> where the profile doesn't name the acid: an acid
    /// that isn't named wasn't shown to be absent.
    /// </summary>
    public MatchedShare? Find(AskedAcid asked)
    {
        var exact = shares.Where(s => s.Acid == asked.Symbol).ToArray();
        var isomers = shares.Where(s => asked.Isomers.Contains(s.Acid)).ToArray();
        if (asked.IsTotal)
        {
            return Sum(asked, asked.Symbol, [.. exact, .. isomers], total: true);
        }

        return exact.Length > 0 || isomers.Length > 0 || asked.Total is null
            ? Sum(asked, asked.Symbol, exact, total: false)
            : Sum(asked, asked.Total, [.. shares.Where(s => s.Acid == asked.Total)], total: true);
    }

    private static MatchedShare? Sum(AskedAcid asked, string acid, FattyAcidShare[] shares, bool total) =>
        shares.Length == 0
            ? null
            : new MatchedShare
            {
                Asked = asked.Symbol,
                Acid = acid,
                Total = total,
                // A share can't leave 0 to 100 %, so a missing end is one of these.
                Low = shares.Sum(s => s.Low ?? s.Typical ?? 0),
                High = Math.Min(100, shares.Sum(s => s.High ?? s.Typical ?? 100)),
            };
}
