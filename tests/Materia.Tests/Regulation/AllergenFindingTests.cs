using Materia.Catalogue.Regulated;
using Materia.Regulation;
using Materia.Regulation.Allergens;
using static Materia.Tests.Regulation.Rules;

namespace Materia.Tests.Regulation;

/// <summary>Thresholds, groups and dates; sums by hand beside each case.</summary>
public class AllergenFindingTests
{
    private static readonly Allergen Citral = Allergen("Citral", Cas("neral", "106-26-3"), Cas("geranial", "141-27-5"), Cas("citral", "5392-40-5"));

    [Fact]
    public void Of_GroupMembersBelowTheThreshold_AreAddedFirst()
    {
        // ../shared/data/regulation/worked-examples.md, 3: neral and geranial 0.0006 % each, together 0.0012 %, above 0.001 %.
        var release = Release([Oil("lemongrass", Analysed("neral", "106-26-3", 32), Analysed("geranial", "141-27-5", 32))], allergens: [Citral]);

        var finding = AllergenFindings.Of(Formula(release, Lotion, ("lemongrass", 0.001875m))).ShouldHaveSingleItem();

        (finding.Amount.High, finding.Declared).ShouldBe((0.0012m, true));
    }

    [Fact]
    public void Of_SumAndItsHalvesStated_CountsThemOnce()
    {
        var release = Release(
            [Oil("lemongrass", Analysed("neral", "106-26-3", 32), Analysed("geranial", "141-27-5", 42), Analysed("citral", "5392-40-5", 74))], allergens: [Citral]);

        AllergenFindings.Of(Formula(release, Lotion, ("lemongrass", 0.05m))).ShouldHaveSingleItem().Amount.High.ShouldBe(0.037m);
    }

    // worked-examples.md, 10: "isoeugenol 0.001 % is not above 0.001 %: not declared".
    [Theory]
    [InlineData(0.001, false)]
    [InlineData(0.00100001, true)]
    public void Of_AmountAtTheThreshold_IsNotAboveIt(double percent, bool declared)
    {
        var release = Release([Oil("isoeugenol-oil", Analysed("isoeugenol", "97-54-1", 100))], allergens: [Allergen("Isoeugenol", Cas("isoeugenol", "97-54-1"))]);

        AllergenFindings.Of(Formula(release, Lotion, ("isoeugenol-oil", (decimal)percent))).ShouldHaveSingleItem().Declared.ShouldBe(declared);
    }

    [Fact]
    public void Of_WashedOff_TakesTheHigherThresholdAndSaysHowFarBelow()
    {
        var release = Release([Oil("lavender", Analysed("limonene", "138-86-3", 0.5m))], allergens: [Allergen("Limonene", Cas("limonene", "138-86-3"))]);

        // 0.5 × 0.5 % = 0.0025 %, a quarter of 0.01 %.
        var finding = AllergenFindings.Of(Formula(release, Soap, ("lavender", 0.5m))).ShouldHaveSingleItem();

        (finding.Threshold, finding.Declared, finding.TimesBelow).ShouldBe((0.01m, false, 4m));
    }

    [Fact]
    public void Of_AdditionNotYetInForce_SaysFromWhen()
    {
        var linalyl = Allergen("Linalyl Acetate", Cas("linalyl acetate", "115-95-7")) with { NewProductsUntil = new DateOnly(2026, 7, 31) };
        var release = Release([Oil("lavender", Analysed("linalyl acetate", "115-95-7", 32))], allergens: [linalyl]);
        RegulatedFormula On(DateOnly day, Authority law) =>
            new([new RegulatedLine("lavender", 0.5m, release.FindIngredient("lavender")!)], release, Soap, [law], day);

        AllergenFindings.Of(On(new DateOnly(2026, 8, 1), Authority.Eu)).Single().Declared.ShouldBeTrue();
        var before = AllergenFindings.Of(On(new DateOnly(2026, 7, 31), Authority.Eu)).Single();
        (before.Declared, before.DeclaredFrom).ShouldBe((false, new DateOnly(2026, 8, 1)));
        AllergenFindings.Of(On(new DateOnly(2026, 8, 1), Authority.Gb)).Single().Declared.ShouldBeFalse();
        AllergenFindings.Of(On(new DateOnly(2026, 8, 1), Authority.Us)).Single().Declared.ShouldBeFalse();
    }

    [Fact]
    public void Gaps_OilWithUnstatedRemainder_CountsWhatCouldBeInIt()
    {
        var release = Release(
            [Oil("lavender", Analysed("linalool", "78-70-6", 70))],
            allergens: [Allergen("Linalool", Cas("linalool", "78-70-6")), Allergen("Eugenol", Cas("eugenol", "97-53-0"))]);

        // 30 % of 0.5 % is open: 0.15 %, in which eugenol could be and linalool is already counted.
        CompositionGaps.Of(Formula(release, Lotion, ("lavender", 0.5m))).Items.ShouldBe([new UnaccountedMaterial("lavender", 0.15m, 1)]);
    }
}
