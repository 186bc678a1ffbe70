using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Formulation.Sections;
using Materia.Regulation;
using Materia.Regulation.Limits;

namespace Materia.Formulation.Optimising;

/// <summary>
/// Tells which limits a formula breaks: any of law or trade standard, and those of opinions that the formula it came from keeps.
/// </summary>
internal sealed class LimitGuard(Release release, ProductUse? use, Market? market, DateOnly asOf, IReadOnlyList<MaterialColumn> columns)
{
    private HashSet<string> tolerated = [];

    /// <summary>Takes the opinions that a formula exceeds already as given.</summary>
    public LimitGuard Tolerating(decimal[] shares)
    {
        tolerated = [.. All(shares).Where(f => f.Status == LimitStatus.Exceeded && f.Authority == Authority.Opinion).Select(f => f.Id)];
        return this;
    }

    /// <summary>All findings on a formula.</summary>
    public IReadOnlyList<LimitFinding> All(decimal[] shares)
    {
        var lines = new Dictionary<Ingredient, decimal>(ReferenceEqualityComparer.Instance);
        for (var j = 0; j < shares.Length; j++)
        {
            foreach (var part in shares[j] > 0 ? columns[j].Parts : [])
            {
                lines[part.Ingredient] = lines.GetValueOrDefault(part.Ingredient) + (part.Share * shares[j]);
            }
        }

        return LimitFindings.Of(new RegulatedFormula([.. lines.Select(l => new RegulatedLine(l.Key.Id, l.Value, l.Key))], release, use, MarketRules.Of(market), asOf));
    }

    /// <summary>The limits that a formula must not break and does.</summary>
    public IReadOnlyList<LimitFinding> Broken(decimal[] shares) => [.. All(shares).Where(f => f.Status == LimitStatus.Exceeded && !tolerated.Contains(f.Id))];

    /// <summary>Lowers the upper bounds of free shares to what the broken limits let pass.</summary>
    /// <returns>The narrower region; <see langword="null"/> when no free share could mend it.</returns>
    public Region? Within(Region region, IReadOnlyList<LimitFinding> broken)
    {
        double[] high = [.. region.High];
        var lowered = false;
        foreach (var passing in broken.SelectMany(f => f.LargestPassing))
        {
            for (var j = 0; j < high.Length; j++)
            {
                var most = Math.Floor(10 * (double)passing.Percent) / 10;
                if (columns[j].Name == passing.Ingredient && high[j] > region.Low[j] && most < high[j] && most >= region.Low[j])
                {
                    high[j] = most;
                    lowered = true;
                }
            }
        }

        return lowered ? region with { High = high } : null;
    }
}
