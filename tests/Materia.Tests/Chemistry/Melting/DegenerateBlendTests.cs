using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>Blends at the edge of what melting means.</summary>
public sealed class DegenerateBlendTests
{
    [Fact]
    public void Of_OneSpecies_IsAllSolidBelowItsMeltingPointAndLiquidAbove()
    {
        // Lauric acid melts at 43.6 °C (ons-melting-points, read).
        var melting = BlendMelting.Of(TestFat.Blend((TestFat.Of("pure-lauric-acid", IngredientKind.FattyAcid, ("12:0", 100)), 1)));

        At(melting, 43).ShouldBe(100, 0.01, "the solver leaves at most e^-14 liquid");
        At(melting, 44).ShouldBe(0);

        // Temperatures are read off within 0.02 °C.
        melting.ClearPoint!.Value!.Value.ShouldBe(43.6, 0.05);
    }

    [Fact]
    public void Of_OnlyLiquids_HasNoSolidAndNoClearPoint()
    {
        var melting = Melt(("squalane", 60), ("lavender-oil", 40));

        melting.SolidContent.ShouldAllBe(p => p.Percent == 0 && p.Low == 0 && p.High == 0);
        melting.ClearPoint!.Value.ShouldBeNull();
        melting.ClearPoint.Absent.ShouldNotBeNullOrEmpty();
        melting.Texture.ShouldAllBe(t => t.Words == "pourable");
        melting.LastToMelt.ShouldBeEmpty();
        melting.Coverage.ShouldBe(1);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(90)]
    public void Of_OilThatIsClearWhenCool_HasAWholeBandOfItsClearPoint(double lavender)
    {
        // Nothing is solid at 10 °C, so it is clear where nothing is left at all: an end at which the curve has no slope.
        var melting = Melt(("lavender-oil", lavender), ("olive-oil", 100 - lavender));

        foreach (var figure in (ComputedFigure[])[melting.ClearPoint!, melting.MeltingStart!, melting.SlipPoint!])
        {
            (figure.Absent is not null || (figure.Low <= figure.Value && figure.Value <= figure.High)).ShouldBeTrue();
        }
    }

    [Fact]
    public void Of_OnlyClay_IsAbsentWithTheReason()
    {
        var melting = Melt(("kaolin", 100));

        melting.SolidContent.ShouldBeEmpty();
        melting.Absent.ShouldNotBeNull().ShouldContain("no fat phase");
        melting.PowderPercent.ShouldBe(100, 1e-9);
        melting.Coverage.ShouldBe(0);
    }

    [Theory]
    [InlineData("beeswax")]
    [InlineData("rice-bran-wax")]
    [InlineData("candelilla-wax")]
    [InlineData("carnauba-wax")]
    [InlineData("sunflower-wax")]
    [InlineData("paraffin-wax")]
    public void Of_OnlyWax_IsHardUntilItMelts(string wax)
    {
        var melting = Melt((wax, 100));

        // Neat waxes are sold as hard pieces; candelilla's resins (14 %) are counted as liquid, so no more than that may be missing.
        At(melting, 20).ShouldBeGreaterThan(80);
        melting.Texture.Single(t => t.Temperature == 40).Words.ShouldBe("hard and brittle");
        melting.ClearPoint!.Value!.Value.ShouldBeInRange(60, 90);
    }

    [Fact]
    public void Of_TraceOfHardFatInOil_NeverHasMoreSolidThanThereIs()
    {
        var oil = Melt(("sunflower-oil-high-oleic", 100));
        var melting = Melt(("hydrogenated-soybean-oil", 0.01), ("sunflower-oil-high-oleic", 99.99));

        // 0.01 % of the mass can add 0.01 point; a hundredth more for the solver's tolerance and for the grouping of rare species.
        for (var t = 10; t <= 80; t++)
        {
            At(melting, t).ShouldBeInRange(At(oil, t) - 0.01, At(oil, t) + 0.02, $"{t} °C");
        }

        melting.Texture.Single(t => t.Temperature == 20).Words.ShouldBe("pourable");
        Falls(melting);
    }

    [Fact]
    public void Of_AllClassesAtOnce_FallsOnHeatingWithinItsBand()
    {
        var melting = Melt(
            ("cocoa-butter", 15), ("palm-stearin", 10), ("coconut-oil", 15), ("shea-butter", 10), ("sunflower-oil", 15), ("cetyl-alcohol", 5), ("stearic-acid", 5),
            ("beeswax", 5), ("candelilla-wax", 4), ("carnauba-wax", 2), ("paraffin-wax", 1), ("hydrogenated-castor-oil", 3), ("lavender-oil", 1), ("kaolin", 9));

        melting.Absent.ShouldBeNull();
        melting.Coverage.ShouldBe(1);
        melting.PowderPercent.ShouldBe(9, 1e-9);
        melting.SolidContent.ShouldAllBe(p => p.Low <= p.Percent && p.Percent <= p.High && p.Low >= 0 && p.High <= 100);
        Falls(melting);

        // The last to go are the highest melting: tri-12-hydroxystearin, 83 to 87 °C neat (recalled).
        melting.ClearPoint!.Value!.Value.ShouldBeInRange(55, 87);
    }

    [Fact]
    public void Of_LittleWithoutComposition_KeepsTheCurveOfTheRestAndSaysSo()
    {
        var melting = Melt(("cocoa-butter", 90), ("ozokerite", 10));
        var rest = Melt(("cocoa-butter", 100));

        melting.Coverage.ShouldBe(0.9, 1e-6);
        melting.Warnings.ShouldContain(w => w.StartsWith("Incomplete", StringComparison.Ordinal) && w.Contains("ozokerite", StringComparison.Ordinal));
        At(melting, 25).ShouldBe(At(rest, 25), 1e-9, "nothing is guessed for what is not known");
    }

    [Fact]
    public void Of_MostWithoutComposition_IsAbsentWithTheReason()
    {
        var melting = Melt(("cocoa-butter", 50), ("ozokerite", 50));

        melting.SolidContent.ShouldBeEmpty();
        melting.Coverage.ShouldBe(0.5, 1e-6);
        melting.Absent.ShouldNotBeNull().ShouldContain("ozokerite");
        melting.Absent.ShouldContain("50 %");
    }

    [Fact]
    public void Of_Castor_CountsAsLiquidWithAWarning()
    {
        var melting = Melt(("castor-oil", 100));

        // A few percent of castor's acids are no hydroxy acids; what crystallises of them is next to nothing above 0 °C.
        At(melting, 0).ShouldBeLessThan(1);
        melting.Warnings.ShouldContain(w => w.Contains("hydroxy", StringComparison.Ordinal));
    }

    private static void Falls(BlendMelting melting) =>
        melting.SolidContent.Zip(melting.SolidContent.Skip(1)).ShouldAllBe(p => p.Second.Percent <= p.First.Percent);

    private static double At(BlendMelting melting, double celsius) => melting.SolidContent.Single(p => p.Temperature == celsius).Percent;

    private static BlendMelting Melt(params (string Id, double Percent)[] parts) =>
        BlendMelting.Of(TestFat.Blend([.. parts.Select(p => (SeedCatalogue.Ingredient(p.Id), p.Percent))]));
}
