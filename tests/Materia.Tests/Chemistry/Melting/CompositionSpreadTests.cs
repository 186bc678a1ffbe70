using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Melting;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>How the ranges of a fat's composition widen the band.</summary>
public sealed class CompositionSpreadTests
{
    private static readonly (string Acid, double Percent)[] Acids = [("16:0", 30), ("18:0", 20), ("18:1", 40), ("18:2", 10)];

    [Fact]
    public void Of_NoRange_SaysThatTheBandIsTheModelsAlone()
    {
        var melting = BlendMelting.Of(TestFat.Blend((TestFat.Of("fat", IngredientKind.Butter, Acids), 1)));

        melting.Warnings.ShouldContain(w => w.StartsWith("No range of composition is held for fat", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_RangesOfTheAcids_WidenTheBandAndLeaveTheCurve()
    {
        var plain = TestFat.Of("fat", IngredientKind.Butter, Acids);
        var ranged = plain with { FattyAcidProfiles = [.. plain.FattyAcidProfiles, TestFat.Range(("16:0", 25, 35), ("18:0", 16, 24), ("18:1", 34, 46), ("18:2", 6, 14))] };
        BlendMelting without = BlendMelting.Of(TestFat.Blend((plain, 1))), with = BlendMelting.Of(TestFat.Blend((ranged, 1)));

        foreach (var (a, b) in without.SolidContent.Zip(with.SolidContent).Where(p => p.First.Temperature is >= 10 and <= 30))
        {
            b.Percent.ShouldBe(a.Percent);
            (b.Low < a.Low || a.Low == 0).ShouldBeTrue($"{a.Temperature} °C");
            b.High.ShouldBeGreaterThan(a.High);
        }

        with.Warnings.ShouldNotContain(w => w.Contains("No range of composition", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void At_AcidsWithRanges_StayInsideThemAndAddUp(bool firm)
    {
        var fat = TestFat.Of("fat", IngredientKind.Butter, Acids) with { FattyAcidProfiles = [TestFat.Sample(Acids), TestFat.Range(("16:0", 25, 35), ("18:1", 34, 46))] };
        var moved = Move(fat, firm)!;

        // Palmitic and oleic acid alone have room: 5 % to one side, 6 % to the other, so 5 % move.
        moved.ShouldBe(firm ? [35, 20, 35, 10] : [25, 20, 45, 10], 1e-9);
    }

    [Theory]
    [InlineData(true, 45)]
    [InlineData(false, 60)]
    public void At_RangeOfTheIodineValueAlone_IsReached(bool firm, double expected)
    {
        var fat = TestFat.Of("fat", IngredientKind.Oil, Acids) with { Properties = [TestFat.Figure(Property.IodineValue, null, 45, 60)] };
        var moved = Move(fat, firm)!;

        moved.Sum().ShouldBe(100, 1e-9);
        (moved[0] / moved[1]).ShouldBe(1.5, 1e-9, "each side keeps its proportions");
        var acids = Acids.Select((a, i) => (a.Acid, moved[i])).ToArray();

        // The iodine value is given to two decimals, a profile in decimals of its own.
        IodineValue.Of(TestFat.Blend((TestFat.Of("moved", IngredientKind.Oil, acids), 1))).Value!.Value.ShouldBe(expected, 0.02);
    }

    [Fact]
    public void At_PrintedFat_MovesAsItsGeneratedSharesDo()
    {
        // All fats of this table can be generated from its two acids, so at the ends of the iodine value it is firmer and softer than it
        // is, and the rule that keeps stearic acid out of the middle still holds: SSS stays rarer than SOS by as much as it was or more.
        (string, double)[] acids = [("18:0", 45), ("18:1n-9", 55)];
        TriacylglycerolShare Share(string species, decimal percent) => new() { Species = species, Typical = percent, Evidence = Evidence.Published, Source = "test", Locator = "1" };
        var fat = TestFat.Of("fat", IngredientKind.Butter, acids) with
        {
            TriacylglycerolProfiles = [new() { Label = "test", Shares = [Share("SOS", 42), Share("SOO", 38), Share("OOO", 14), Share("SSS", 1)] }],
            Properties = [TestFat.Figure(Property.IodineValue, null, 40, 58)],
        };
        var species = SpeciesOfIngredient.Of(fat, SeedCatalogue.Release);
        static double Of(IEnumerable<(PureSpecies Species, double Moles)> from, string name) => from.Single(s => s.Species.Name == name).Moles / from.Sum(s => s.Moles);

        Of(species.Firmest!, "SOS").ShouldBeGreaterThan(Of(species.Species, "SOS"));
        Of(species.Softest!, "SOS").ShouldBeLessThan(Of(species.Species, "SOS"));
        Of(species.Firmest!, "OOO").ShouldBeLessThan(Of(species.Species, "OOO"));
        Of(species.Firmest!, "SSS").ShouldBeLessThan(0.03);
    }

    [Fact]
    public void Independent_TwoRanges_AddAsSquares()
    {
        var (low, high) = Band.Independent(10, (7, 13), (14, 6));
        low.ShouldBe(5, 1e-12);
        high.ShouldBe(15, 1e-12);
    }

    private static double[]? Move(Ingredient fat, bool firm)
    {
        var profile = fat.FattyAcidProfiles[0];
        FattyAcid[] acids = [.. profile.Shares.Select(s => SeedCatalogue.Release.FindFattyAcid(s.Acid)!)];
        return AcidSpread.At(firm ? Firmness.Firmest : Firmness.Softest, fat, profile, acids, [.. profile.Shares.Select(s => (double)s.Typical!)]);
    }
}
