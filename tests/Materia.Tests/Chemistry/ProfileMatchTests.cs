using Materia.Chemistry;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>96 commercial oils that are no part of the catalogue, each to come out as the oil that it is.</summary>
public class ProfileMatchTests
{
    /// <summary>
    /// Which ingredients count as the class. Sunflower and rapeseed are sold in bred varieties under one class name, so each variety of
    /// the same plant's oil counts; nothing else does.
    /// </summary>
    internal static readonly Dictionary<string, string[]> Expected = new(StringComparer.Ordinal)
    {
        ["corn"] = ["corn-oil"],
        ["olive"] = ["olive-oil"],
        ["peanut"] = ["peanut-oil"],
        ["pumpkin"] = ["pumpkin-seed-oil"],
        ["rapeseed"] = ["canola-oil", "canola-oil-high-oleic"],
        ["soybean"] = ["soybean-oil"],
        ["sunflower"] = ["sunflower-oil", "sunflower-oil-mid-oleic", "sunflower-oil-high-oleic"],
    };

    [Fact]
    public void Nearest_CommercialOils_FindTheirKind()
    {
        var samples = CheckFiles.CommercialOils();
        samples.Count.ShouldBe(96);
        var hits = new Dictionary<string, (int First, int Five, int All)>(StringComparer.Ordinal);
        var misses = new List<string>();
        foreach (var (acids, kind) in samples)
        {
            var ids = ProfileMatch.Nearest(acids, SeedCatalogue.Release, 5).Select(m => m.Ingredient.Id).ToList();
            var hit = hits.GetValueOrDefault(kind);
            hits[kind] = (hit.First + (Expected[kind].Contains(ids[0]) ? 1 : 0), hit.Five + (ids.Any(Expected[kind].Contains) ? 1 : 0), hit.All + 1);
            if (!Expected[kind].Contains(ids[0]))
            {
                misses.Add($"{kind}: {ids[0]}");
            }
        }

        var report = string.Join("; ", hits.OrderBy(h => h.Key).Select(h => $"{h.Key} {h.Value.First}/{h.Value.Five}/{h.Value.All}"))
            + " | " + string.Join(", ", misses.GroupBy(m => m).Select(g => $"{g.Key} x{g.Count()}"));
        TestContext.Current.TestOutputHelper?.WriteLine(report);

        // 70 first and 91 among five when this was written. The floors leave room for a catalogue profile that gets a better source; the
        // rest are oils that truly lie close together (sunflower at 26 % oleic acid and corn, pumpkin and sesame).
        hits.Values.Sum(h => h.First).ShouldBeGreaterThanOrEqualTo(65, report);
        hits.Values.Sum(h => h.Five).ShouldBeGreaterThanOrEqualTo(87, report);
    }

    [Fact]
    public void Nearest_CataloguesOwnProfile_IsItself()
    {
        var olive = SeedCatalogue.Ingredient("olive-oil");
        var shares = olive.FattyAcidProfiles.First(p => p.Kind == Materia.Catalogue.ProfileKind.Sample).Shares;

        var nearest = ProfileMatch.Nearest(shares.ToDictionary(s => s.Acid, s => (double)s.Typical!.Value), SeedCatalogue.Release, 1).Single();

        nearest.Ingredient.Id.ShouldBe("olive-oil");
        nearest.Distance.ShouldBe(0, 0.001, "the stored shares add up to 100 % only within rounding");
    }

    [Theory]
    [InlineData("18:1x", 100)]
    [InlineData("18:1", -1)]
    [InlineData("18:1", double.NaN)]
    [InlineData("18:1", 0)]
    [InlineData("18:1", 106)]
    public void Nearest_BadProfile_Throws(string acid, double percent) =>
        Should.Throw<ArgumentException>(() => ProfileMatch.Nearest(new Dictionary<string, double> { [acid] = percent }, SeedCatalogue.Release, 1));
}
