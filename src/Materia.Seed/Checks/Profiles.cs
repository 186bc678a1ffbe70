using System.Globalization;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Fatty-acid profiles: known symbols of the right half, none twice, percentages in order, a sum that can be right.</summary>
internal static class Profiles
{
    /// <summary>Least sum of a sample [%]. Analyses leave out traces and what they could not name; below this a main acid is missing.</summary>
    public const decimal LeastSum = 97;

    /// <summary>Greatest sum of a sample [%]: rounding of some ten shares to one decimal.</summary>
    public const decimal GreatestSum = 100.5m;

    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var acids = new Dictionary<string, FattyAcid>(StringComparer.Ordinal);
        foreach (var (acid, _) in seed.FattyAcids)
        {
            acids[acid.Symbol] = acid;
        }

        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (profile, at) in Statements.Items(ingredient.FattyAcidProfiles, place, "fattyAcidProfiles"))
            {
                CheckShares(profile, at, seed.HasFattyAcids ? acids : null, faults);
                CheckSum(profile, at, faults);
            }
        }
    }

    private static void CheckShares(FattyAcidProfile profile, Place place, Dictionary<string, FattyAcid>? acids, FaultList faults)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (share, at) in Statements.Items(profile.Shares, place, "shares"))
        {
            new RangeOrder(share.Low, share.Typical, share.High).CheckPercent(at, faults);
            if (!seen.Add(share.Acid))
            {
                faults.Add(at, $"acid \"{share.Acid}\" stands twice in the profile; add the shares up or correct one symbol");
            }

            if (acids is null)
            {
                continue;
            }

            if (!acids.TryGetValue(share.Acid, out var acid))
            {
                faults.Add(at, $"acid \"{share.Acid}\" is not in {Tables.FattyAcidTable.Path}; add a row or correct the symbol");
            }
            else if (acid.Alcohol != (profile.Of == ProfilePart.Alcohols))
            {
                var mismatch = acid.Alcohol ? "an alcohol in a profile of acids" : "an acid in a profile of alcohols";
                faults.Add(at, $"\"{share.Acid}\" is {mismatch}; correct the symbol or the profile's \"of\"");
            }
        }
    }

    private static void CheckSum(FattyAcidProfile profile, Place at, FaultList faults)
    {
        if (profile.Shares.Count == 0)
        {
            faults.Add(at, "the profile has no shares; add them or remove the profile");
        }
        else if (profile.Kind == ProfileKind.Sample)
        {
            var sum = profile.Shares.Sum(Central);
            if (sum is < LeastSum or > GreatestSum)
            {
                faults.Add(at, string.Create(CultureInfo.InvariantCulture, $"the shares of the sample add up to {sum} %, not to {LeastSum} to {GreatestSum} %; check them against the source"));
            }
        }
        else
        {
            var sum = profile.Shares.Sum(s => s.Low ?? 0);
            if (sum > 100)
            {
                faults.Add(at, string.Create(CultureInfo.InvariantCulture, $"the low ends of the ranges add up to {sum} %, more than 100 %; check them against the source"));
            }
        }
    }

    /// <summary>The typical share, else the middle of the range, where an absent low end is none at all ("traces", "less than").</summary>
    private static decimal Central(FattyAcidShare share) =>
        share.Typical ?? (share.High is { } high ? ((share.Low ?? 0) + high) / 2 : share.Low ?? 0);
}
