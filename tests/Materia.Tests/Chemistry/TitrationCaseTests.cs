using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry;

/// <summary>Which figure an ingredient's titration takes, case by case.</summary>
public class TitrationCaseTests
{
    [Fact]
    public void IodineValue_Triolein_IsTheoretical()
    {
        // 253.809 × 3 / 885.4 g/mol = 86.0, the printed factor 0.860 times 100; two decimals of the factor's last digit.
        var triolein = TestFat.Of("triolein", IngredientKind.Oil, ("18:1n-9", 100));

        IodineValue.Of(TestFat.Blend((triolein, 1))).Value!.Value.ShouldBe(86.0, 0.05);
        SaponificationValue.Of(TestFat.Blend((triolein, 1))).Value!.Value.ShouldBe(190.1, 0.1, "168318/885.4");
    }

    [Fact]
    public void IodineValue_ConjugatedAcids_IsNeverComputed()
    {
        var oil = TestFat.Of("punica", IngredientKind.Oil, ("18:3-9c11t13c", 80), ("18:1n-9", 20));

        var without = IodineValue.Of(TestFat.Blend((oil, 1)));
        var measured = IodineValue.Of(TestFat.Blend((oil with { Properties = [TestFat.Figure(Property.IodineValue, 130)] }, 1)));

        without.Value.ShouldBeNull();
        without.Absent!.ShouldContain("punica");
        measured.Value.ShouldBe(130);
        measured.Warnings.ShouldContain(w => w.Contains("conjugated", StringComparison.Ordinal));
    }

    [Fact]
    public void Jojoba_WaxEsterArithmetic_AgreesWithTheMerckIndex()
    {
        // The Merck Index prints 81.7 and 92.2, and a mean wax-ester mass of 606 g/mol; the check rows give ±4 and ±2.
        var jojoba = SeedCatalogue.Ingredient("jojoba-oil");

        IodineValue.Of(TestFat.Blend((jojoba, 1))).Value!.Value.ShouldBe(81.7, 4);
        SaponificationValue.Of(TestFat.Blend((jojoba, 1))).Value!.Value.ShouldBe(92.2, 2);
        (56106 / SaponificationValue.Of(TestFat.Blend((jojoba, 1))).Value!.Value).ShouldBe(606, 10);
    }

    [Fact]
    public void Jojoba_Composition_ListsAlcoholsApart()
    {
        var result = FattyAcidComposition.Of(TestFat.Blend((SeedCatalogue.Ingredient("jojoba-oil"), 1)));

        result.Alcohols.ShouldNotBeEmpty();
        result.Alcohols.ShouldAllBe(a => a.Acid.EndsWith("-ol", StringComparison.Ordinal));
        result.Alcohols.Sum(a => a.Percent).ShouldBe(100, 0.01);
        result.Acids.ShouldAllBe(a => !a.Acid.EndsWith("-ol", StringComparison.Ordinal));
    }

    [Fact]
    public void NaturalWax_WithAProfile_KeepsItsMeasuredValue()
    {
        var wax = TestFat.Of("wax", IngredientKind.Wax, ("18:1n-9", 100)) with { Properties = [TestFat.Figure(Property.SaponificationValue, null, 87, 104)] };

        var value = SaponificationValue.Of(TestFat.Blend((wax, 1)));

        value.Value.ShouldBe(95.5);
        value.Low.ShouldBe(87);
        value.High.ShouldBe(104);
    }

    [Fact]
    public void SaturatedAlcohol_WithALimit_CountsAsNoughtUpToIt()
    {
        var result = IodineValue.Of(TestFat.Blend((SeedCatalogue.Ingredient("stearyl-alcohol"), 1)));

        result.Value.ShouldBe(0);
        result.Low.ShouldBe(0);
        result.High.ShouldBe(2.0, "the monograph's limit is not more than 2.0");
    }

    [Fact]
    public void Unsaponifiable_Known_LowersTheValueButNotTheUpperEnd()
    {
        var plain = TestFat.Of("plain", IngredientKind.Oil, ("18:1n-9", 100));
        var rich = plain with { Properties = [TestFat.Figure(Property.UnsaponifiableMatter, 10)] };

        var before = IodineValue.Of(TestFat.Blend((plain, 1)));
        var after = IodineValue.Of(TestFat.Blend((rich, 1)));

        after.Value!.Value.ShouldBe(before.Value!.Value * 0.9, 0.01);
        after.High.ShouldBe(before.High);
    }

    [Fact]
    public void Powder_InTheFormula_ChangesNothingButTheWarning()
    {
        var olive = SeedCatalogue.Ingredient("olive-oil");

        var pure = IodineValue.Of(TestFat.Blend((olive, 1)));
        var filled = IodineValue.Of(TestFat.Blend((olive, 0.6), (SeedCatalogue.Ingredient("kaolin"), 0.4)));

        filled.Value.ShouldBe(pure.Value);
        filled.Coverage.ShouldBe(1);
        filled.Warnings.ShouldContain(w => w.Contains("60 %", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.04, false, false)]
    [InlineData(0.20, true, false)]
    [InlineData(0.60, true, true)]
    public void MissingData_ByItsShare_IsAnnotatedFlaggedOrRefused(double share, bool flagged, bool refused)
    {
        var result = IodineValue.Of(TestFat.Blend((SeedCatalogue.Ingredient("olive-oil"), 1 - share), (TestFat.Of("mystery", IngredientKind.Wax), share)));

        result.Coverage.ShouldBe(1 - share, 1e-6);
        (result.Value is null).ShouldBe(refused);
        (result.Absent ?? result.Warnings.Single()).ShouldContain("mystery");
        if (!refused)
        {
            result.Warnings.Single().StartsWith("Incomplete", StringComparison.Ordinal).ShouldBe(flagged);
        }
    }

    [Fact]
    public void SodiumHydroxide_IsTheMolarShare()
    {
        var koh = SaponificationValue.Of(TestFat.Blend((SeedCatalogue.Ingredient("olive-oil"), 1)));

        var naoh = SaponificationValue.InSodiumHydroxide(koh);

        naoh.Value!.Value.ShouldBe(koh.Value!.Value * 0.7129, 0.03, "39.997/56.106 printed as 0.7129");
        naoh.Low!.Value.ShouldBeLessThan(naoh.Value.Value);
        naoh.Method.ShouldBe("sodium-hydroxide-demand");
    }

    [Fact]
    public void RangeProfile_WidensTheValueToItsGuaranteedBounds()
    {
        // The limits and the bounds of the worked example (116 to 144), each with the model's ±5.
        var oil = TestFat.Of("sunflower-like", IngredientKind.Oil, ("16:0", 6), ("18:0", 4), ("18:1n-9", 25), ("18:2n-6", 65));
        oil = oil with
        {
            FattyAcidProfiles = [.. oil.FattyAcidProfiles, TestFat.Range(("16:0", 5.0m, 7.6m), ("18:0", 2.7m, 6.5m), ("18:1n-9", 14.0m, 39.4m), ("18:2n-6", 48.3m, 74.0m), ("18:3n-3", 0, 0.3m))],
        };

        var result = IodineValue.Of(TestFat.Blend((oil, 1)));

        result.Low!.Value.ShouldBe(116 - 5, 0.5);
        result.High!.Value.ShouldBe(144 + 5, 0.5);
    }
}
