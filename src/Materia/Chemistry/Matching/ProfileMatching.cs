using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Matching;

/// <summary>What a measured fatty-acid profile says of the fat that it was taken from.</summary>
public sealed record ProfileMatching
{
    /// <summary>The key of the method that ranks the nearest fats.</summary>
    public const string MethodId = "profile-distance";

    /// <summary>The key of the method that finds mixtures.</summary>
    public const string MixtureMethodId = "profile-mixture";

    /// <summary>A sum below this [%] leaves so much unnamed that it is said.</summary>
    private const double FullSum = 95;

    /// <summary>The nearest fats of the catalogue, nearest first.</summary>
    public required IReadOnlyList<MatchedFat> Nearest { get; init; }

    /// <summary>Mixtures of two fats that explain the profile clearly better than any one does, best first; empty when none does, or when the published range of the fat claimed (or, without a claim, of one of the nearest) allows it as it is.</summary>
    public required IReadOnlyList<MatchedMixture> Mixtures { get; init; }

    /// <summary>Whether it is what it is said to be; absent when nothing was claimed.</summary>
    public ClaimedFat? Claimed { get; init; }

    /// <summary>What the shares add up to [%].</summary>
    public required double Sum { get; init; }

    /// <summary>The key of the method of the nearest.</summary>
    public required string Method { get; init; }

    /// <summary>What limits the result.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>Compares a profile with the catalogue.</summary>
    /// <param name="measured">Shares by symbol, as <see cref="ProfileMatch.Nearest"/> takes them [%].</param>
    /// <param name="claimed">The fat that it is said to be, or <see langword="null"/>.</param>
    /// <param name="release">The release.</param>
    /// <param name="limit">How many fats and mixtures to give at most.</param>
    /// <exception cref="ArgumentException">As for <see cref="ProfileMatch.Nearest"/>.</exception>
    public static ProfileMatching Of(IReadOnlyDictionary<string, double> measured, Ingredient? claimed, Release release, int limit)
    {
        var ranked = ProfileMatch.Nearest(measured, release, int.MaxValue);
        var profile = new MeasuredProfile(measured, release);
        var index = MaterialIndex.For(release);
        var fats = ranked.Select(m => (m.Ingredient, Shares: index.Find(m.Ingredient).Shares!, m.Distance)).ToList();
        var nearest = fats.Take(limit).Select(f => MatchedFat.Of(f.Ingredient, f.Distance, f.Shares, profile, Within(f.Ingredient))).ToList();
        var verdict = claimed is null ? null : ClaimedFat.Of(claimed, ranked, profile, measured, release);

        // What one fat's published range allows needs no second fat to explain it.
        var explained = verdict is null ? nearest.Any(n => n.WithinRange == true) : verdict.WithinRange == true;
        return new()
        {
            Nearest = nearest,
            Mixtures = explained ? [] : MatchedMixture.Find(fats.Select(f => (f.Ingredient, f.Shares)), profile, limit),
            Claimed = verdict,
            Sum = profile.Sum,
            Method = MethodId,
            Warnings = Limits(profile),
        };

        bool? Within(Ingredient fat) =>
            RangeComparison.RangeOf(fat) is { } range && RangeComparison.Of(range, profile, measured, release) is { Compared: > 0 } found ? found.Outside.Count == 0 : null;
    }

    private static List<string> Limits(MeasuredProfile profile)
    {
        var warnings = new List<string> { "A fatty-acid profile ranks fats, it does not prove identity: kinds lie close together, and harvests and bred varieties differ." };
        if (profile.Sum < FullSum)
        {
            warnings.Add($"The shares add up to {Written.Number(profile.Sum)} %; what was not named was not compared. Give an acid that was looked for and not found as 0.");
        }

        return warnings;
    }
}

/// <summary>A fat near a measured profile.</summary>
public sealed record MatchedFat
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its common name.</summary>
    public required string Name { get; init; }

    /// <summary>The distance that it is ranked by, 0 to 1 [1].</summary>
    public required double Distance { get; init; }

    /// <summary>The share of the fatty acids that differs: half the sum of the absolute differences over the acids named [%].</summary>
    public required double PercentDiffering { get; init; }

    /// <summary>Whether every acid compared lies inside the published range; absent when the catalogue has none.</summary>
    public bool? WithinRange { get; init; }

    /// <summary>Acids of the fat, from 1 % up, that the measurement does not name.</summary>
    public required IReadOnlyList<UncomparedAcid> NotCompared { get; init; }

    internal static MatchedFat Of(Ingredient ingredient, double distance, AcidShares shares, MeasuredProfile profile, bool? within) => new()
    {
        Id = ingredient.Id,
        Name = ingredient.CommonName(),
        Distance = distance,
        PercentDiffering = profile.Differing(profile.Of(shares)),
        WithinRange = within,
        NotCompared = profile.Uncompared(shares),
    };
}

/// <summary>An acid that only the catalogue's fat has a figure for.</summary>
/// <param name="Acid">Carbons and double bonds, such as <c>18:1</c>; a substituted or ring acid has its own symbol.</param>
/// <param name="Percent">Its share in the fat [%].</param>
public sealed record UncomparedAcid(string Acid, double Percent);
