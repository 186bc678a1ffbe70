using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry;

public class CompositionCaseTests
{
    private static readonly Ingredient Total = TestFat.Of("total", IngredientKind.Oil, ("18:1", 60), ("16:0", 40));

    private static readonly Ingredient Isomers = TestFat.Of("isomers", IngredientKind.Oil, ("18:1n-9", 50), ("18:1n-7", 10), ("16:0", 40));

    [Fact]
    public void Of_TotalBesideIsomers_CountsNothingTwice()
    {
        var result = FattyAcidComposition.Of(TestFat.Blend((Total, 0.5), (Isomers, 0.5)));

        result.Acids.Select(a => a.Acid).ShouldBe(["16:0", "18:1", "18:1n-9", "18:1n-7"]);
        result.Acids.Single(a => a.Acid == "18:1").Percent.ShouldBe(30, 0.001);
        result.Acids.Single(a => a.Acid == "18:1n-9").Percent.ShouldBe(25, 0.001);
        var total = result.Totals.Single(t => t.Chain == "18:1");
        total.Percent.ShouldBe(60, 0.001);
        total.Of.ShouldBe(["18:1", "18:1n-7", "18:1n-9"]);
        result.Classes!.Monounsaturated.Percent.ShouldBe(60, 0.001);
        result.Warnings.ShouldContain(w => w.Contains("totals", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_HydroxyAcid_KeepsItsOwnTotal()
    {
        var result = FattyAcidComposition.Of(TestFat.Blend((SeedCatalogue.Ingredient("castor-oil"), 1)));

        result.Totals[0].Chain.ShouldBe("18:1n-9-12OH");
        result.Totals.Single(t => t.Chain == "18:1").Of.ShouldNotContain("18:1n-9-12OH");
    }

    [Fact]
    public void Of_WaxEsterAndOil_WeighsByTheirAcids()
    {
        // Half of jojoba is alcohol: in equal parts with an oil its acids make about a third of all acids, 0.51 against 0.96.
        var oil = TestFat.Of("palmitin", IngredientKind.Butter, ("16:0", 100));

        var result = FattyAcidComposition.Of(TestFat.Blend((oil, 0.5), (SeedCatalogue.Ingredient("jojoba-oil"), 0.5)));

        result.Acids[0].Acid.ShouldBe("16:0");
        result.Acids[0].Percent.ShouldBe(100 * 0.955 / (0.955 + 0.514), 0.5, "the ratio above to three digits");
    }

    [Fact]
    public void Of_ProfileThatDoesNotAddUp_IsLeftOutAndNamed()
    {
        var broken = TestFat.Of("broken", IngredientKind.Oil, ("18:1n-9", 60), ("16:0", 20));

        var result = FattyAcidComposition.Of(TestFat.Blend((Isomers, 0.8), (broken, 0.2)));

        result.Coverage.ShouldBe(0.8, 1e-6);
        result.Warnings.ShouldContain(w => w.StartsWith("broken", StringComparison.Ordinal) && w.Contains("80 %", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_OnlyMinerals_IsAbsentWithTheReason()
    {
        var result = FattyAcidComposition.Of(TestFat.Blend((SeedCatalogue.Ingredient("kaolin"), 1)));

        result.Absent.ShouldBe("There is no fat-bearing mass in the formula.");
        result.Coverage.ShouldBe(0);
    }

    [Fact]
    public void Of_RangeOnTheIsomer_BoundsTheTotalOfTheSample()
    {
        var oil = Total with { FattyAcidProfiles = [.. Total.FattyAcidProfiles, TestFat.Range(("18:1n-9", 50, 70), ("16:0", 0, 45))] };

        var row = FattyAcidComposition.Of(TestFat.Blend((oil, 1))).Acids.Single(a => a.Acid == "18:1");

        // At least 55, because palmitic acid takes at most 45.
        row.Low.ShouldBe(55, 1e-9);
        row.High.ShouldBe(70, 1e-9);
    }

    [Fact]
    public void Blend_BadMassFraction_Throws()
    {
        foreach (var mass in new[] { -0.1, double.NaN, double.PositiveInfinity, 0 })
        {
            Should.Throw<ArgumentException>(() => TestFat.Blend((Total, mass)));
        }
    }
}
