using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using static Materia.Tests.Regulation.Labels;
using static Materia.Tests.Regulation.Rules;

namespace Materia.Tests.Regulation.Declaring;

/// <summary>Allergens on the label: ../shared/data/regulation/worked-examples.md, 1 to 3 and 10.</summary>
public class DeclaredAllergenTests
{
    private static readonly DateOnly Additions = new(2026, 7, 31);

    private static readonly Allergen[] List =
    [
        Allergen("Linalool", Cas("linalool", "78-70-6")),
        Allergen("Limonene", Cas("limonene", "138-86-3")),
        Allergen("Coumarin", Cas("coumarin", "91-64-5")),
        Allergen("Eugenol", Cas("eugenol", "97-53-0")),
        Allergen("Isoeugenol", Cas("isoeugenol", "97-54-1")),
        Allergen("Benzyl Alcohol", Cas("benzyl alcohol", "100-51-6")),
        Allergen("Citral", Cas("neral", "106-26-3"), Cas("geranial", "141-27-5")),
        Allergen("Linalyl Acetate", Cas("linalyl acetate", "115-95-7")) with { NewProductsUntil = Additions },
        Allergen("Camphor", Cas("camphor", "76-22-2")) with { NewProductsUntil = Additions },
        Allergen("Eugenyl Acetate", Cas("eugenyl acetate", "93-28-7")) with { NewProductsUntil = Additions },
        Allergen("Beta-Caryophyllene", Cas("beta-caryophyllene", "87-44-5")) with { NewProductsUntil = Additions },
        Extract("Lavandula Oil/Extract", "Lavandula Angustifolia Oil"),
        Extract("Lemongrass Oil", "Cymbopogon Citratus Leaf Oil"),
        Extract("Eugenia Caryophyllus Oil", "Eugenia Caryophyllus Bud Oil"),
    ];

    private static readonly Ingredient Lavender = Named("lavender-oil", IngredientKind.EssentialOil, "Lavandula Angustifolia Oil", "Lavender oil") with
    {
        Constituents =
        [
            Analysed("linalool", "78-70-6", 35), Analysed("linalyl acetate", "115-95-7", 32), Analysed("limonene", "138-86-3", 0.5m),
            Analysed("coumarin", "91-64-5", 0.1m), Analysed("camphor", "76-22-2", 0.4m),
        ],
    };

    private static readonly Ingredient Clove = Named("clove-oil", IngredientKind.EssentialOil, "Eugenia Caryophyllus Bud Oil", "Clove oil") with
    {
        Constituents =
        [
            Analysed("eugenol", "97-53-0", 82), Analysed("eugenyl acetate", "93-28-7", 8), Analysed("beta-caryophyllene", "87-44-5", 6), Analysed("isoeugenol", "97-54-1", 0.2m),
        ],
    };

    private static readonly Ingredient Lemongrass = Named("lemongrass-oil", IngredientKind.EssentialOil, "Cymbopogon Citratus Leaf Oil", "Lemongrass oil") with
    {
        Constituents = [Analysed("neral", "106-26-3", 32), Analysed("geranial", "141-27-5", 42)],
    };

    [Fact]
    public void Of_LavenderInShowerGel_NamesWhatIsAboveTheRinseOffThreshold()
    {
        // Example 1: linalool 0.175 %, linalyl acetate 0.16 %, the oil 0.5 %; limonene 0.0025 % is not named.
        var draft = Draft(Shelf(), Authority.Eu, Soap, ("water", 99.5m), ("lavender-oil", 0.5m));

        draft.Text.ShouldBe("Ingredients: Aqua, Parfum, Lavandula Oil/Extract, Linalool, Linalyl Acetate");
        draft.Entries.Single(e => e.Name == "Linalool").Share.High.ShouldBe(0.175m);
        draft.Entries.Single(e => e.Name == "Linalyl Acetate").Share.High.ShouldBe(0.16m);
    }

    [Fact]
    public void Of_LavenderInShowerGelInGreatBritain_NamesLinaloolOnly() =>
        Draft(Shelf(), Authority.Gb, Soap, ("water", 99.5m), ("lavender-oil", 0.5m)).Text.ShouldBe("Ingredients: Aqua, Parfum, Linalool");

    [Fact]
    public void Of_LavenderInTheUnitedStates_NamesNone() =>
        Draft(Shelf(), Authority.Us, Soap, ("water", 99.5m), ("lavender-oil", 0.5m)).Text.ShouldBe("Ingredients: Water, Fragrance");

    [Fact]
    public void Of_LavenderInFaceCream_NamesWhatIsAboveTheLeaveOnThreshold()
    {
        // Example 2: linalool 0.007 %, linalyl acetate 0.0064 %, the oil 0.02 %; coumarin 0.00002, camphor 0.00008 and limonene 0.0001 % are not named.
        var draft = Draft(Shelf(), Authority.Eu, Cream, ("water", 99.98m), ("lavender-oil", 0.02m));

        draft.Text.ShouldBe("Ingredients: Aqua, Parfum, Lavandula Oil/Extract, Linalool, Linalyl Acetate");
        draft.Entries.Where(e => e.Group == Materia.Regulation.Declaring.DeclarationGroup.Allergen).Select(e => e.Share.High).ShouldBe([0.02m, 0.007m, 0.0064m]);
    }

    [Fact]
    public void Of_Citral_IsSummedAndNamedOnce()
    {
        // Example 3: 0.05 × 0.74 = 0.037 %.
        var draft = Draft(Shelf(), Authority.Eu, Lotion, ("shea-butter", 99.95m), ("lemongrass-oil", 0.05m));

        draft.Text.ShouldEndWith("Parfum, Lemongrass Oil, Citral");
        draft.Entries.Single(e => e.Name == "Citral").Share.High.ShouldBe(0.037m);
    }

    [Fact]
    public void Of_CloveInSoap_NamesFourAndOrdersEugenolByWeight()
    {
        // Example 10: eugenol 1.64 %, eugenyl acetate 0.16 %, beta-caryophyllene 0.12 %, the oil 2 %; isoeugenol 0.004 % is below 0.01 %.
        var draft = Draft(Shelf(), Authority.Eu, Soap, ("water", 98), ("clove-oil", 2));

        draft.Text.ShouldBe("Ingredients: Aqua, Parfum, Eugenia Caryophyllus Oil, Eugenol, Eugenyl Acetate, Beta-Caryophyllene");
    }

    [Fact]
    public void Of_CloveInLotion_LeavesOutIsoeugenolAtTheThreshold() =>
        // Example 10: 0.5 × 0.2 % = 0.001 %, which is not above 0.001 %.
        Draft(Shelf(), Authority.Eu, Lotion, ("water", 99.5m), ("clove-oil", 0.5m)).Text.ShouldNotContain("Isoeugenol");

    [Fact]
    public void Of_AllergenThatIsAnIngredient_IsPrintedOnceInItsPlace()
    {
        // EU-ING-15: benzyl alcohol as preservative.
        var benzyl = Named("benzyl-alcohol", IngredientKind.Preservative, "Benzyl Alcohol") with
        {
            Numbers = [new() { Registry = Registry.Cas, Number = "100-51-6", Evidence = Evidence.Memory, Source = "recalled" }],
        };

        var draft = Draft(Shelf(benzyl), Authority.Eu, Cream, ("water", 95), ("glycerin", 3), ("benzyl-alcohol", 2));

        draft.Text.ShouldBe("Ingredients: Aqua, Glycerin, Benzyl Alcohol");
        draft.Entries[2].Rules.ShouldContain("EU-ING-15");
    }

    [Fact]
    public void Of_AlternativeWithOilsNamed_PrintsAListedOilUnderItsGroupNameOnce()
    {
        // EU-ING-13: printed under the group name; the constituents follow.
        var alternative = Draft(Shelf(), Authority.Eu, Soap, ("water", 99.5m), ("lavender-oil", 0.5m)).Alternative;

        alternative.ShouldBe("Ingredients: Aqua, Lavandula Oil/Extract, Linalool, Linalyl Acetate");
    }

    private static Release Shelf(params Ingredient[] more) => Release(
        [.. Labels.Shelf.Where(s => s.Id != "lavender-oil" && more.All(m => m.Id != s.Id)), Lavender, Clove, Lemongrass, .. more], allergens: List);

    private static Allergen Extract(string name, string inci) =>
        Allergen(name, new RegulatedMember { Name = inci, InciName = inci }) with { NaturalExtract = true, NewProductsUntil = Additions };
}
