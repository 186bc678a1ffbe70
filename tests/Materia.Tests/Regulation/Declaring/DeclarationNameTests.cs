using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using static Materia.Tests.Regulation.Labels;

namespace Materia.Tests.Regulation.Declaring;

/// <summary>Names by market, mixtures, perfume and nanomaterials.</summary>
public class DeclarationNameTests
{
    [Fact]
    public void Of_UnitedStates_PrintsEnglishNames()
    {
        // US-ING-08: English names; botanical Latin alone is none.
        var draft = Draft(Authority.Us, Cream, ("water", 70), ("shea-butter", 28.9m), ("perfume", 1), ("iron-oxide-red", 0.1m));

        draft.Text.ShouldBe("Ingredients: Water, Shea butter (Butyrospermum Parkii Butter), Fragrance, Red iron oxide");
        draft.Entries.Single(e => e.Name == "Red iron oxide").Note.ShouldNotBeNull().ShouldContain("CI 77491");
    }

    [Theory]
    [InlineData(Authority.Eu, "Parfum")]
    [InlineData(Authority.Gb, "Parfum")]
    [InlineData(Authority.Us, "Fragrance")]
    public void Of_EssentialOils_StandTogetherInThePlaceOfTheirSum(Authority law, string word)
    {
        // 0.8 + 0.7 = 1.5 %, above glycerin: EU-ING-09 sums them for the place.
        var draft = Draft(law, Cream, ("water", 97.3m), ("glycerin", 1.2m), ("lavender-oil", 0.8m), ("rose-oil", 0.7m));

        var entry = draft.Entries.Single(e => e.Name == word);
        (entry.Share.Typical, string.Join(' ', entry.Ingredients)).ShouldBe((1.5m, "lavender-oil rose-oil"));
        draft.Entries[1].ShouldBe(entry);
        draft.Alternative.ShouldNotBeNull().ShouldContain("Lavandula Angustifolia Oil");
        draft.Alternative.ShouldNotContain(word);
    }

    [Fact]
    public void Of_LipProduct_PrintsAroma() =>
        Draft(Authority.Eu, LipBalm, ("shea-butter", 99.5m), ("lavender-oil", 0.5m)).Text.ShouldEndWith("Aroma");

    [Fact]
    public void Of_NoOils_HasNoAlternative() => Draft(Authority.Eu, Cream, ("water", 100)).Alternative.ShouldBeNull();

    [Fact]
    public void Of_Mixture_IsBrokenUpAndEqualNamesMerged()
    {
        // 10 % of wax: cetearyl alcohol 8 %, ceteareth-20 2 %. 1 % of preserved water: 0.6 % water on top of 88, 0.4 % phenoxyethanol on top of 0.5.
        var draft = Draft(Authority.Eu, Cream, ("water", 88.5m), ("emulsifying-wax", 10), ("preserved-water", 1), ("phenoxyethanol", 0.5m));

        draft.Entries.Select(e => (e.Name, e.Share.Typical)).ShouldBe(
            [("Aqua", 89.1m), ("Cetearyl Alcohol", 8m), ("Ceteareth-20", 2m), ("Phenoxyethanol", 0.9m), ("Cetyl Alcohol", 0m)]);
        draft.Steps.ShouldNotBeNull().Single(s => s.Name == "Phenoxyethanol").Arithmetic.ShouldBe("preserved-water 0.4 + phenoxyethanol 0.5 = 0.9 %");
    }

    [Fact]
    public void Of_MixtureWhoseRangeSpansOnePercent_SaysThatThePlaceIsOpen() =>
        Draft(Authority.Eu, Cream, ("water", 95), ("emulsifying-wax", 5)).Entries.Single(e => e.Name == "Ceteareth-20").Note.ShouldNotBeNull().ShouldContain("spans 1 %");

    [Fact]
    public void Of_NanoGrade_CarriesTheWordAndOnlyThen()
    {
        var draft = Draft(Authority.Eu, Cream, ("water", 90), ("zinc-oxide-nano", 10));

        draft.Text.ShouldEndWith("Zinc Oxide (nano)");
        draft.Entries[1].Rules.ShouldContain("EU-ING-08");
        Draft(Authority.Eu, Cream, ("water", 100)).Text.ShouldNotContain("nano");
    }

    [Fact]
    public void Of_MaterialWithoutName_IsUnresolvedAndMarkedInTheText()
    {
        var draft = Draft(Authority.Eu, Cream, ("water", 98), ("nameless", 2));

        draft.Text.ShouldBe("Ingredients: Aqua, [Grandmother's extract]");
        var open = draft.Unresolved.ShouldHaveSingleItem();
        (open.Ingredient, open.Percent).ShouldBe(("nameless", 2m));
        open.WhatToDo.ShouldContain("INCI name");
    }

    [Fact]
    public void Of_ColourantWithSeveralNames_PrintsTheColourIndexInEuropeAndTheMarkedNameInTheUnitedStates()
    {
        var carmine = Named("carmine", IngredientKind.Colourant, "CI 75470", "Carmine") with
        {
            Names = [Name("Carmine", NameKind.Common), Name("CI 75470", NameKind.Inci), Name("Carmine", NameKind.Inci) with { Note = "the name on labels in the United States" }],
        };

        Draft(Release(carmine), Authority.Eu, Cream, ("water", 99), ("carmine", 1)).Text.ShouldEndWith("CI 75470");
        Draft(Release(carmine), Authority.Us, Cream, ("water", 99), ("carmine", 1)).Text.ShouldEndWith("Carmine");
    }
}
