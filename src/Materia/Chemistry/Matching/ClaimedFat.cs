using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Matching;

/// <summary>Whether a measured profile is that of the fat that it is said to be.</summary>
public sealed record ClaimedFat
{
    /// <summary>The id of the fat.</summary>
    public required string Id { get; init; }

    /// <summary>Its common name.</summary>
    public required string Name { get; init; }

    /// <summary>Its place among all fats, 1 for the nearest; absent when the catalogue has no sample of it.</summary>
    public int? Rank { get; init; }

    /// <summary>The share of the fatty acids that differs from the catalogue's sample [%].</summary>
    public double? PercentDiffering { get; init; }

    /// <summary>Whether every acid compared lies inside the published range; absent when the catalogue has no range, or none could be compared.</summary>
    public bool? WithinRange { get; init; }

    /// <summary>What the range is called.</summary>
    public string? Range { get; init; }

    /// <summary>The acids outside their range.</summary>
    public required IReadOnlyList<AcidOutside> Outside { get; init; }

    /// <summary>Acids of the range that the measurement does not name.</summary>
    public required IReadOnlyList<string> NotCompared { get; init; }

    /// <summary>Why there is no verdict.</summary>
    public string? Absent { get; init; }

    internal static ClaimedFat Of(
        Ingredient claimed, IReadOnlyList<ProfileMatch> ranked, MeasuredProfile profile, IReadOnlyDictionary<string, double> measured, Release release)
    {
        var place = ranked.Index().Where(r => r.Item.Ingredient.Id == claimed.Id).Select(r => (int?)r.Index + 1).FirstOrDefault();
        var shares = MaterialIndex.For(release).Find(claimed).Shares;
        var range = RangeComparison.RangeOf(claimed);
        var result = new ClaimedFat
        {
            Id = claimed.Id,
            Name = claimed.CommonName(),
            Rank = place,
            PercentDiffering = place is null || shares is null ? null : profile.Differing(profile.Of(shares)),
            Range = range?.Label,
            Outside = [],
            NotCompared = [],
        };
        if (range is null)
        {
            return result with { Absent = "The catalogue holds no published range of its fatty acids; compare with the sample by percentDiffering." };
        }

        var found = RangeComparison.Of(range, profile, measured, release);
        return found.Compared == 0
            ? result with { NotCompared = found.Missing, Absent = "None of the acids of the range was measured." }
            : result with { WithinRange = found.Outside.Count == 0, Outside = found.Outside, NotCompared = found.Missing };
    }
}

/// <summary>An acid whose measured share lies outside the range of the fat.</summary>
/// <param name="Acid">Its symbol.</param>
/// <param name="Percent">The measured share [%].</param>
/// <param name="Low">The lower end of the range [%].</param>
/// <param name="High">The upper end of the range [%].</param>
/// <param name="Source">The key of the source of the range.</param>
/// <param name="Locator">Where in the source.</param>
public sealed record AcidOutside(string Acid, double Percent, decimal? Low, decimal? High, string Source, string? Locator);
