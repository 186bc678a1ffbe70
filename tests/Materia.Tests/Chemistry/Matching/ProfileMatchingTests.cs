using CsCheck;
using Materia.Catalogue;
using Materia.Chemistry.Matching;

namespace Materia.Tests.Chemistry.Matching;

/// <summary>Nearest fats, mixtures and claims.</summary>
public class ProfileMatchingTests
{
    private static Release Release => SeedCatalogue.Release;

    [Fact]
    public void Of_CataloguesOwnSample_IsItselfWithoutMixture()
    {
        var result = ProfileMatching.Of(Sample("avocado-oil"), null, Release, 5);

        result.Nearest[0].Id.ShouldBe("avocado-oil");
        result.Nearest[0].PercentDiffering.ShouldBe(0, 0.6, "stored shares add up to 100 % only within rounding");
        result.Mixtures.ShouldBeEmpty("nothing explains it clearly better than itself");
    }

    /// <summary>
    /// A mixture made of two samples is found again with its shares, as long as it lies outside what olive oil may be: from about three
    /// quarters on its linoleic acid comes under the 21 % of CXS 33, and nothing asks for a second oil.
    /// </summary>
    [Fact]
    public void Of_MixtureOfTwoSamples_FindsPartsAndShares()
    {
        var (first, second) = (Sample("olive-oil"), Sample("soybean-oil"));
        Gen.Int[25, 70].Sample(
            percent =>
            {
                var mixed = first.Keys.Union(second.Keys).ToDictionary(
                    acid => acid, acid => (percent * first.GetValueOrDefault(acid) / 100) + ((100 - percent) * second.GetValueOrDefault(acid) / 100));
                var mixtures = ProfileMatching.Of(mixed, SeedCatalogue.Ingredient("olive-oil"), Release, 5).Mixtures;
                var own = mixtures.FirstOrDefault(m => m.Parts.Any(p => p.Id == "olive-oil") && m.Parts.Any(p => p.Id == "soybean-oil"));
                own.ShouldNotBeNull($"{percent} %");

                // The stored samples are brought to 100 % before they are compared, which moves a share by up to a percent or two.
                own.Parts.Single(p => p.Id == "olive-oil").Percent.ShouldBe(percent, 2);
                own.PercentDiffering.ShouldBeLessThan(1);
            },
            iter: 20);
    }

    [Fact]
    public void Of_TrueOlive_LiesInsideTheRange()
    {
        var claimed = ProfileMatching.Of(Sample("olive-oil"), SeedCatalogue.Ingredient("olive-oil"), Release, 3).Claimed.ShouldNotBeNull();

        claimed.Rank.ShouldBe(1);
        claimed.WithinRange.ShouldBe(true, string.Join(", ", claimed.Outside));
    }

    /// <summary>CXS 33 (Codex standard for olive oils) allows 2.5 to 21 % linoleic acid; the certificate shows 35.6 %.</summary>
    [Fact]
    public void Of_OliveWithTooMuchLinoleic_NamesTheAcid()
    {
        var profile = new Dictionary<string, double> { ["16:0"] = 9.5, ["18:0"] = 3.2, ["18:1"] = 50.1, ["18:2"] = 35.6, ["18:3"] = 0.4 };

        var claimed = ProfileMatching.Of(profile, SeedCatalogue.Ingredient("olive-oil"), Release, 3).Claimed.ShouldNotBeNull();

        claimed.WithinRange.ShouldBe(false);
        claimed.Outside.ShouldContain(o => o.Acid.StartsWith("18:2", StringComparison.Ordinal) && o.Percent == 35.6);
    }

    [Fact]
    public void Of_FewAcids_SaysWhatWasNotCompared()
    {
        var result = ProfileMatching.Of(new Dictionary<string, double> { ["12:0"] = 47 }, SeedCatalogue.Ingredient("coconut-oil"), Release, 3);

        result.Nearest[0].NotCompared.ShouldContain(a => a.Acid == "14:0");
        result.Claimed!.NotCompared.ShouldNotBeEmpty();
        result.Warnings.ShouldContain(w => w.Contains("47"));
    }

    [Fact]
    public void Of_FatWithoutRange_SaysThatThereIsNoVerdict()
    {
        var without = Release.Content.Ingredients.First(i =>
            i.Kind == IngredientKind.Oil && i.FattyAcidProfiles.Any(p => p.Kind == ProfileKind.Sample) && i.FattyAcidProfiles.All(p => p.Kind == ProfileKind.Sample));

        var claimed = ProfileMatching.Of(Sample("olive-oil"), without, Release, 3).Claimed.ShouldNotBeNull();

        claimed.WithinRange.ShouldBeNull();
        claimed.Absent.ShouldNotBeNull();
    }

    /// <summary>Against a search in steps of a thousandth.</summary>
    [Fact]
    public void BestShare_RandomProfiles_IsTheLeastSquare() =>
        Gen.Double[0, 100].Array[6].Array[3].Sample(rows =>
        {
            var share = MatchedMixture.BestShare(rows[0], rows[1], rows[2]);
            var best = Enumerable.Range(0, 1001).Min(step => Square(rows, step / 1000.0));
            Square(rows, share).ShouldBeLessThanOrEqualTo(best + 1e-6);
        });

    private static double Square(double[][] rows, double share) =>
        rows[0].Select((m, i) => m - (share * rows[1][i]) - ((1 - share) * rows[2][i])).Sum(d => d * d);

    private static Dictionary<string, double> Sample(string id)
    {
        var profiles = SeedCatalogue.Ingredient(id).FattyAcidProfiles.Where(p => p.Kind == ProfileKind.Sample && p.Of == ProfilePart.Acids).ToList();
        return (profiles.Find(p => p.Used) ?? profiles[0]).Shares.ToDictionary(s => s.Acid, s => (double)s.Typical!.Value);
    }
}
