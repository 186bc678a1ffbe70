using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Limits;
using static Materia.Tests.Regulation.Rules;

namespace Materia.Tests.Regulation;

/// <summary>Sums and verdicts; the expected numbers are worked out by hand beside each case.</summary>
public class LimitFindingTests
{
    private const string Eugenol = "97-53-0";
    private const string MethylEugenol = "93-15-2";

    [Fact]
    public void Of_TwoOilsWithTheSameSubstance_AddsTheirHighShares()
    {
        var release = Release(
            [Oil("clove", Share("eugenol", Eugenol, 75, 90)), Oil("bay", Share("eugenol", Eugenol, 40, 60))],
            [Limit("eugenol", 0.64m, Cas("eugenol", Eugenol))]);

        // 0.4 × 90 % + 0.5 × 60 % = 0.36 + 0.30 = 0.66, over 0.64; at the low end 0.3 + 0.2 = 0.5.
        var finding = LimitFindings.Of(Formula(release, Lotion, ("clove", 0.4m), ("bay", 0.5m))).ShouldHaveSingleItem();

        finding.Status.ShouldBe(LimitStatus.Exceeded);
        (finding.Amount.Low, finding.Amount.High).ShouldBe((0.5m, 0.66m));
        finding.Contributions.Select(c => c.Ingredient).ShouldBe(["clove", "bay"]);

        // Clove may stay at (0.64 − 0.30)/0.90 = 0.3777…, bay at (0.64 − 0.36)/0.60 = 0.4666….
        finding.LargestPassing.ShouldBe([new LargestPassing("clove", 0.3777m), new LargestPassing("bay", 0.4666m)]);
    }

    // "Not greater than": a share equal to the limit is allowed. Binary fractions would make 0.1 × 3 greater than 0.3.
    [Theory]
    [InlineData(0.3, false, LimitStatus.Near)]
    [InlineData(0.3, true, LimitStatus.Exceeded)]
    [InlineData(0.3001, false, LimitStatus.Exceeded)]
    [InlineData(0.2999, true, LimitStatus.Near)]
    [InlineData(0.24, false, LimitStatus.Within)]
    [InlineData(0.2401, false, LimitStatus.Near)]
    public void Of_ShareAtTheLimit_IsDecidedAsTheInstrumentWordsIt(double percent, bool below, LimitStatus expected)
    {
        var release = Release(
            [Material("salicylic-acid", IngredientKind.Active, "69-72-7")],
            [Limit("salicylic", 0.3m, Cas("salicylic acid", "69-72-7")) with { Below = below }]);

        LimitFindings.Of(Formula(release, Lotion, ("salicylic-acid", (decimal)percent))).ShouldHaveSingleItem().Status.ShouldBe(expected);
    }

    [Fact]
    public void Of_SaltCountedAsAcid_TakesTheFactor()
    {
        // ../shared/data/regulation/worked-examples.md, 4: 0.55 × 122.12/144.10 = 0.4661 of 0.5; the highest level of the salt is 0.590.
        var release = Release(
            [Material("sodium-benzoate", IngredientKind.Preservative, "532-32-1")],
            [Limit("benzoic", 0.5m, Cas("benzoic acid", "65-85-0"), Cas("sodium benzoate", "532-32-1", 122.12m / 144.10m))]);

        var finding = LimitFindings.Of(Formula(release, Lotion, ("sodium-benzoate", 0.55m))).ShouldHaveSingleItem();

        finding.Status.ShouldBe(LimitStatus.Near);
        decimal.Round(finding.Amount.High, 4).ShouldBe(0.4661m);
        finding.LargestPassing.Single().Percent.ShouldBe(0.5899m);
    }

    [Fact]
    public void Of_PartOfAPart_MultipliesTheShares()
    {
        CompositePart Part(string name, string id, decimal share) =>
            new() { InciName = name, Ingredient = id, Low = share, Typical = share, High = share, Evidence = Evidence.Memory, Source = "recalled" };
        var release = Release(
            [
                Material("phenoxyethanol", IngredientKind.Preservative, "122-99-6"),
                Material("blend", IngredientKind.Preservative) with { Parts = [Part("Phenoxyethanol", "phenoxyethanol", 90)] },
                Material("base", IngredientKind.Emulsifier) with { Parts = [Part("Blend", "blend", 2)] },
            ],
            [Limit("phenoxyethanol", 1, Cas("phenoxyethanol", "122-99-6"))]);

        // 50 % of a base with 2 % of a blend that is nine tenths phenoxyethanol: 50 × 0.02 × 0.9 = 0.9.
        var finding = LimitFindings.Of(Formula(release, Lotion, ("base", 50m))).ShouldHaveSingleItem();

        finding.Amount.High.ShouldBe(0.9m);
        finding.LargestPassing.Single().Percent.ShouldBe(55.5555m);
    }

    [Fact]
    public void Of_OilThatSaysNothingOfTheSubstance_IsNeverWithin()
    {
        var release = Release(
            [Oil("rose", Share("methyl eugenol", MethylEugenol, 0, 2)), Oil("lavender", Share("linalool", "78-70-6", 60, 70))],
            [Limit("methyl eugenol", 0.01m, Cas("methyl eugenol", MethylEugenol))],
            [Allergen("methyl eugenol", Cas("methyl eugenol", MethylEugenol))]);

        // Rose alone brings 0.1 × 2 % = 0.002. Lavender leaves 40 % of itself open: 0.5 × 40 % = 0.2, more than the limit leaves.
        var finding = LimitFindings.Of(Formula(release, Lotion, ("rose", 0.1m), ("lavender", 0.5m))).ShouldHaveSingleItem();

        finding.Status.ShouldBe(LimitStatus.Unknown);
        (finding.Amount.High, finding.NotExcluded).ShouldBe((0.002m, 0.2m));
        finding.Unstated.ShouldBe(["lavender"]);
        LimitFindings.Of(Formula(release, Lotion, ("rose", 0.1m))).ShouldHaveSingleItem().Status.ShouldBe(LimitStatus.Within);
    }

    [Fact]
    public void Of_ShareWithoutUpperEnd_MayFillWhatTheOthersLeave()
    {
        var release = Release(
            [Oil("clove", Share("eugenol", Eugenol, 75, null), Share("eugenyl acetate", "93-28-7", 5, 15))],
            [Limit("eugenol", 0.9m, Cas("eugenol", Eugenol))]);

        // At most 100 − 5 = 95 % of 1 %.
        LimitFindings.Of(Formula(release, Lotion, ("clove", 1m))).ShouldHaveSingleItem().Amount.High.ShouldBe(0.95m);
    }

    [Fact]
    public void Of_AnalysedLot_IsTakenAsItIs()
    {
        var release = Release([Oil("clove-lot", Analysed("eugenol", Eugenol, 82))], [Limit("eugenol", 1.7m, Cas("eugenol", Eugenol))]);

        var finding = LimitFindings.Of(Formula(release, Soap, ("clove-lot", 2m))).ShouldHaveSingleItem();

        (finding.Amount.Low, finding.Amount.Typical, finding.Amount.High).ShouldBe((1.64m, 1.64m, 1.64m));
    }

    [Fact]
    public void Of_Prohibited_IsExceededByAnyShare()
    {
        var release = Release(
            [Material("borax", IngredientKind.PhAdjuster, "1303-96-4")],
            [Limit("borates", null, Cas("borax", "1303-96-4")) with { Kind = LimitKind.Prohibited }]);

        LimitFindings.Of(Formula(release, Lotion, ("borax", 0.001m))).ShouldHaveSingleItem().Status.ShouldBe(LimitStatus.Exceeded);
    }

    [Fact]
    public void Of_PhototoxicOils_AddUpAsRatios()
    {
        // ../shared/data/regulation/worked-examples.md, 7: 0.2/0.4 + 0.3/0.7 = 0.9286, and with 0.2 % of lemon at 2.0 1.0286.
        Limit Photo(string id, decimal max) => Limit(id, max, new RegulatedMember { Name = id, Ingredient = id }) with { Kind = LimitKind.Phototoxic, Authority = Authority.Ifra, RatioGroup = "phototoxic" };
        var release = Release(
            [Oil("bergamot"), Oil("lime"), Oil("lemon"), Oil("bergamot-fcf")],
            [Photo("bergamot", 0.4m), Photo("lime", 0.7m), Photo("lemon", 2.0m)]);

        var two = LimitFindings.Of(Formula(release, Lotion, ("bergamot", 0.2m), ("lime", 0.3m), ("bergamot-fcf", 5m))).ShouldHaveSingleItem();
        var three = LimitFindings.Of(Formula(release, Lotion, ("bergamot", 0.2m), ("lime", 0.3m), ("lemon", 0.2m))).ShouldHaveSingleItem();

        (two.Status, decimal.Round(two.Amount.High, 4), two.Unit).ShouldBe((LimitStatus.Near, 0.9286m, "1"));
        (three.Status, decimal.Round(three.Amount.High, 4)).ShouldBe((LimitStatus.Exceeded, 1.0286m));

        // Lemon may fill what is left: (1 − 0.928571…) × 2.0 = 0.142857….
        three.LargestPassing.Single(p => p.Ingredient == "lemon").Percent.ShouldBe(0.1428m);
    }

    [Fact]
    public void Of_AnotherTypeOfProduct_IsNotBound()
    {
        var release = Release(
            [Material("salicylic-acid", IngredientKind.Active, "69-72-7")],
            [
                Limit("leave-on", 0.5m, Cas("salicylic acid", "69-72-7")) with { Scope = new ProductScope { Exposure = Exposure.LeaveOn } },
                Limit("category-9", 3, Cas("salicylic acid", "69-72-7")) with { Scope = new ProductScope { IfraCategories = ["9"] } },
            ]);

        LimitFindings.Of(Formula(release, Soap, ("salicylic-acid", 1m))).Select(f => f.Id).ShouldBe(["category-9"]);
        LimitFindings.Of(Formula(release, Lotion, ("salicylic-acid", 1m))).Select(f => f.Id).ShouldBe(["leave-on"]);
        LimitFindings.Of(Formula(release, null, ("salicylic-acid", 1m))).Count.ShouldBe(2);
    }

    [Fact]
    public void Of_SeveralMembersOfOneMaterial_CountOnce()
    {
        var release = Release(
            [Oil("lemon", Share("limonene", "5989-27-5", 60, 80))],
            [Limit("limonene", 1, Cas("limonene", "138-86-3"), Cas("d-limonene", "5989-27-5"), new RegulatedMember { Name = "Limonene", InciName = "limonene" })]);

        LimitFindings.Of(Formula(release, Lotion, ("lemon", 1m))).ShouldHaveSingleItem().Amount.High.ShouldBe(0.8m);
    }

    [Fact]
    public void Of_MixtureWhosePartsAreNotKnown_LeavesEveryLimitOpen()
    {
        var mixture = Material("mixture", IngredientKind.Preservative) with
        {
            Names =
            [
                new IngredientName { Text = "mixture", Kind = NameKind.Common, Evidence = Evidence.Memory, Source = "recalled" },
                new IngredientName { Text = "Benzyl Alcohol", Kind = NameKind.Inci, Evidence = Evidence.Memory, Source = "recalled" },
                new IngredientName { Text = "Salicylic Acid", Kind = NameKind.Inci, Evidence = Evidence.Memory, Source = "recalled" },
            ],
        };
        var release = Release(
            [mixture, Material("salicylic-acid", IngredientKind.Active, "69-72-7")],
            [Limit("salicylic", 0.5m, Cas("salicylic acid", "69-72-7"))]);

        var finding = LimitFindings.Of(Formula(release, Lotion, ("salicylic-acid", 0.1m), ("mixture", 1m))).ShouldHaveSingleItem();

        (finding.Status, finding.NotExcluded).ShouldBe((LimitStatus.Unknown, 1m));
    }
}
