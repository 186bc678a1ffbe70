using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Cautioning;
using Materia.Tests.Chemistry;
using static Materia.Tests.Regulation.Labels;

namespace Materia.Tests.Regulation.Cautioning;

/// <summary>Each caution stands when the formula calls for it, and not otherwise.</summary>
public class CautionTests
{
    private static readonly Ingredient[] Hazards =
    [
        Named("kaolin", IngredientKind.Clay, "Kaolin"),
        Named("corn-starch", IngredientKind.Starch, "Zea Mays Starch"),
        Named("table-salt", IngredientKind.Powder, "Sodium Chloride"),
        Named("brine", IngredientKind.Surfactant, null) with { Parts = [Part("Coco-Betaine", 30, 30, 30), Part("Sodium Chloride", 6, 6, 6, "table-salt")] },
        Named("talc", IngredientKind.Powder, "Talc"),
        Named("lye", IngredientKind.PhAdjuster, "Sodium Hydroxide"),
        Named("lactic-acid", IngredientKind.PhAdjuster, "Lactic Acid"),
        Named("alcohol", IngredientKind.Solvent, "Alcohol"),
        Named("honey", IngredientKind.Humectant, "Honey"),
        Named("almond-oil", IngredientKind.Oil, "Prunus Amygdalus Dulcis Oil", "Almond oil") with
        {
            Origin = new() { From = OriginKind.Plant, AllergenFamilies = [AllergenFamily.TreeNut], Evidence = Evidence.CommonPractice, Source = "trade-practice" },
        },
        Named("linseed-oil", IngredientKind.Oil, "Linum Usitatissimum Seed Oil") with { FattyAcidProfiles = [TestFat.Sample([("18:3n-3", 55), ("18:1n-9", 45)])] },
        Named("peppermint-oil", IngredientKind.EssentialOil, "Mentha Piperita Oil") with { Constituents = [Rules.Share("menthol", "89-78-1", 30, 55)] },
        Named("spike", IngredientKind.EssentialOil, "Lavandula Latifolia Oil") with { Constituents = [Rules.Share("camphor", "76-22-2", 0.1m, 9.9m)] },
        Named("bergamot-oil", IngredientKind.EssentialOil, "Citrus Aurantium Bergamia Peel Oil") with { Constituents = [Rules.Share("bergapten", "484-20-8", 0.1m, 0.3m)] },
        Named("noted", IngredientKind.Ester, "Noted Ester") with { Cautions = [new() { Text = "Mind the note.", Evidence = Evidence.Memory, Source = "recalled" }] },
    ];

    public static TheoryData<string, double, string, bool> Cases => new()
    {
        { "shea-butter", 50, "burns by hot fat", true },
        { "almond-oil", 50, "burns by hot fat", false },
        { "kaolin", 10, "dust with respirable quartz", true },
        { "corn-starch", 10, "dust with respirable quartz", false },
        { "corn-starch", 10, "dust", true },
        { "brine", 10, "dust", false },
        { "brine", 10, "irritation and allergy", true },
        { "talc", 10, "talc dust", true },
        { "lye", 5, "burns by strong alkali", true },
        { "lactic-acid", 5, "burns by strong acid", true },
        { "alcohol", 20, "fire", true },
        { "linseed-oil", 20, "rags that heat themselves", true },
        { "linseed-oil", 4.9, "rags that heat themselves", false },
        { "almond-oil", 50, "rags that heat themselves", false },
        { "lavender-oil", 1, "undiluted essential oils", true },
        { "lavender-oil", 1, "pregnancy and nursing", true },
        { "lavender-oil", 1, "essential oils on infants", true },
        { "lavender-oil", 1, "irritation and allergy", true },
        { "lavender-oil", 1, "cramp of the airways and fits", false },
        { "spike", 1, "cramp of the airways and fits", false },
        { "peppermint-oil", 1, "cramp of the airways and fits", true },
        { "almond-oil", 50, "irritation and allergy", false },
        { "almond-oil", 50, "allergy to tree nuts", true },
        { "honey", 5, "honey and infants", true },
        { "bergamot-oil", 1, "burns by sunlight", true },
        { "noted", 5, "from the ingredient's record", true },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_Material_CallsForTheCaution(string id, double percent, string hazard, bool expected)
    {
        var cautions = Of(Rules.Lotion, (id, (decimal)percent), ("glycerin", 100 - (decimal)percent));

        cautions.Any(c => c.Hazard == hazard).ShouldBe(expected);
        if (expected)
        {
            cautions.First(c => c.Hazard == hazard).Ingredients.ShouldBe([id]);
        }
    }

    [Fact]
    public void Of_PlainFormula_SaysOnlyThatItIsNoSafetyAssessment()
    {
        var only = Of(Rules.Lotion, ("glycerin", 100)).ShouldHaveSingleItem();

        only.Hazard.ShouldBe("this is no safety assessment");
        only.WhatToDo.ShouldContain("qualified safety assessor");
    }

    [Fact]
    public void Of_PhototoxicOilThatIsWashedOff_SaysNothingOfTheSun() =>
        Of(Rules.Soap, ("glycerin", 99), ("bergamot-oil", 1)).ShouldNotContain(c => c.Hazard == "burns by sunlight");

    [Fact]
    public void Of_PhototoxicLimit_SpeaksInPlaceOfTheGeneralRule()
    {
        var limit = Rules.Limit("bergamot", 0.4m, new RegulatedMember { Name = "bergamot oil", Ingredient = "bergamot-oil" }) with
        {
            Kind = LimitKind.Phototoxic,
            Authority = Authority.Ifra,
            Source = "ifra-51-extraction",
            Evidence = Evidence.Secondary,
        };
        var release = Rules.Release([.. Shelf, .. Hazards], [limit]);

        var caution = Cautions.Of(Formula(release, Authority.Eu, Rules.Lotion, ("glycerin", 99.9m), ("bergamot-oil", 0.1m))).Where(c => c.Hazard == "burns by sunlight").ShouldHaveSingleItem();

        (caution.Source, caution.Evidence).ShouldBe(("ifra-51-extraction", Evidence.Secondary));
    }

    [Fact]
    public void Of_OilInTheShower_IsSlippery()
    {
        Of(Rules.Soap, ("almond-oil", 30), ("glycerin", 70)).ShouldContain(c => c.Hazard == "slipping");
        Of(Rules.Lotion, ("almond-oil", 30), ("glycerin", 70)).ShouldNotContain(c => c.Hazard == "slipping");
    }

    [Fact]
    public void Of_EyeArea_ConcernsFaceAndHairOnly()
    {
        Of(Cream, ("lavender-oil", 1), ("glycerin", 99)).ShouldContain(c => c.Hazard == "eyes");
        Of(Rules.Lotion, ("lavender-oil", 1), ("glycerin", 99)).ShouldNotContain(c => c.Hazard == "eyes");
    }

    [Fact]
    public void Of_UseWithACaution_PassesItOn() =>
        Of(Rules.Lotion with { Caution = "Not on broken skin." }, ("glycerin", 100)).ShouldContain(c => c.WhatToDo == "Not on broken skin.");

    [Fact]
    public void Of_WaterAndMelt_WarnsOfSteam() =>
        Of(Rules.Lotion, ("water", 70), ("shea-butter", 30)).ShouldContain(c => c.Hazard == "spatter of steam");

    [Fact]
    public void Sources_All_AreInTheSeedData() => Cautions.Sources.Where(s => SeedCatalogue.Release.FindSource(s) is null).ShouldBeEmpty();

    private static IReadOnlyList<CautionFinding> Of(ProductUse use, params (string, decimal)[] lines) =>
        Cautions.Of(Formula(Rules.Release([.. Shelf, .. Hazards]), Authority.Eu, use, lines));
}
