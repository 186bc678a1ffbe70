using System.Globalization;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Triacylglycerol profiles: names of three known chains, none twice, percentages in order, a sum that can be right.</summary>
internal static class Triacylglycerols
{
    /// <summary>Greatest sum of a profile [%]: rounding of some ten shares to one decimal. There is no least sum, as many sources print the main species only.</summary>
    public const decimal GreatestSum = 100.5m;

    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (profile, at) in Statements.Items(ingredient.TriacylglycerolProfiles, place, "triacylglycerolProfiles"))
            {
                CheckShares(profile, at, faults);
                CheckSum(profile, at, faults);
            }
        }
    }

    private static void CheckShares(TriacylglycerolProfile profile, Place place, FaultList faults)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (share, at) in Statements.Items(profile.Shares, place, "shares"))
        {
            new RangeOrder(share.Low, share.Typical, share.High).CheckPercent(at, faults);
            if (TriacylglycerolSpecies.Parse(share.Species) is not { } species)
            {
                faults.Add(at, $"species \"{share.Species}\" is not three known chains; write each as one of {string.Join(", ", TriacylglycerolSpecies.Letters)}, and join two printed as one sum with {TriacylglycerolSpecies.Joint}");
                continue;
            }

            foreach (var name in species.Where(s => !seen.Add(s)))
            {
                faults.Add(at, $"species \"{name}\" stands twice in the profile, mirror images counted as one; add the shares up or correct one name");
            }
        }
    }

    private static void CheckSum(TriacylglycerolProfile profile, Place at, FaultList faults)
    {
        var sum = profile.Shares.Sum(s => s.Typical ?? s.Low ?? 0);
        if (profile.Shares.Count == 0)
        {
            faults.Add(at, "the profile has no shares; add them or remove the profile");
        }
        else if (sum > GreatestSum)
        {
            faults.Add(at, string.Create(CultureInfo.InvariantCulture, $"the shares add up to {sum} %, more than {GreatestSum} %; check them against the source"));
        }
    }
}
