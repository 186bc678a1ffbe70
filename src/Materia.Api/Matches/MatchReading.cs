using System.Globalization;
using System.Text.RegularExpressions;
using Materia.Api.Http;
using Materia.Api.Ingredients;
using Materia.Api.Serving;
using Materia.Catalogue;

namespace Materia.Api.Matches;

/// <summary>Checks a measured profile and names every fault with its place.</summary>
internal static partial class MatchReading
{
    private const int MostAcids = 100;
    private const int MostLimit = 20;
    private const int UsualLimit = 5;
    private const decimal LargestSum = 105;

    /// <summary>The profile, the fat claimed and the number asked for; what is wrong is noted in <paramref name="faults"/>.</summary>
    public static (IReadOnlyDictionary<string, double> Profile, Ingredient? Claimed, int Limit) Read(MatchRequest request, ServedRelease served, RequestFaults faults)
    {
        var limit = request.Limit ?? UsualLimit;
        if (limit is < 1 or > MostLimit)
        {
            faults.Add("/limit", string.Create(CultureInfo.InvariantCulture, $"limit must be from 1 to {MostLimit}."));
        }

        return (Profile(request.FattyAcids, served.Release, faults), Claimed(request.Claimed, served, faults), limit);
    }

    private static Dictionary<string, double> Profile(IReadOnlyList<MeasuredAcid> acids, Release release, RequestFaults faults)
    {
        var profile = new Dictionary<string, double>(StringComparer.Ordinal);
        if (acids.Count is 0 or > MostAcids)
        {
            faults.Add("/fattyAcids", acids.Count == 0
                ? "Give the acids with their shares, such as [ { \"acid\": \"18:1\", \"percent\": 70 }, … ]."
                : string.Create(CultureInfo.InvariantCulture, $"There are {acids.Count} acids; {MostAcids} at most."));
            return profile;
        }

        decimal sum = 0;
        for (var i = 0; i < acids.Count; i++)
        {
            var at = string.Create(CultureInfo.InvariantCulture, $"/fattyAcids/{i}");
            var (acid, percent) = (acids[i].Acid, acids[i].Percent);
            if (percent is not (>= 0 and <= 100))
            {
                faults.Add(at + "/percent", "Give the share as a number from 0 to 100.");
            }

            if (acid is null || !IsKnown(acid, release))
            {
                faults.Add(at + "/acid", Unknown(acid, release));
            }
            else if (!profile.TryAdd(acid, (double)(percent ?? 0)))
            {
                faults.Add(at + "/acid", $"{acid} stands twice; give it once.");
            }

            sum += percent is >= 0 and <= 100 ? percent.Value : 0;
        }

        if (!faults.Any && sum is <= 0 or > LargestSum)
        {
            faults.Add("/fattyAcids", string.Create(CultureInfo.InvariantCulture, $"The shares add up to {sum} %; they must add up to more than 0 and at most {LargestSum} %. A total and its isomers must not both be given."));
        }

        return profile;
    }

    private static Ingredient? Claimed(string? id, ServedRelease served, RequestFaults faults)
    {
        if (id is null)
        {
            return null;
        }

        var found = served.Release.FindIngredient(id) ?? (served.Release.FindPresentId(id) is { } present ? served.Release.FindIngredient(present) : null);
        if (found is null)
        {
            faults.Add("/claimed", UnknownIngredient.Message(id, served.Index));
        }
        else if (found.FattyAcidProfiles.Count == 0)
        {
            faults.Add("/claimed", $"The catalogue holds no fatty acids of {found.Id}, so that nothing can be compared with it. Leave claimed out, or name a fat.");
        }

        return found;
    }

    private static bool IsKnown(string acid, Release release) => release.FindFattyAcid(acid) is { Alcohol: false } || BareChain().IsMatch(acid);

    private static string Unknown(string? acid, Release release)
    {
        if (acid is null)
        {
            return "Give the symbol of the acid, such as 18:1n-9.";
        }

        var known = release.Content.FattyAcids.Where(a => !a.Alcohol).ToList();
        var byName = known.FirstOrDefault(a => a.Name.StartsWith(acid, StringComparison.OrdinalIgnoreCase))?.Symbol;
        var nearest = byName ?? NearestWord.Of(acid, known.Select(a => a.Symbol));
        return $"There is no fatty acid '{(acid.Length <= 40 ? acid : acid[..40] + "...")}'.{(nearest is null ? string.Empty : $" Did you mean {nearest}?")} GET /v1/fatty-acids lists the symbols; a total such as 18:1 will do too.";
    }

    // From butyric acid to the longest acids of waxes, 36 carbons, and no more double bonds than docosahexaenoic acid has.
    [GeneratedRegex("^([4-9]|[12][0-9]|3[0-6]):[0-6]$")]
    private static partial Regex BareChain();
}
