using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Declaring;
using Materia.Tests.Chemistry;
using static Materia.Tests.Regulation.Labels;

namespace Materia.Tests.Regulation.Declaring;

/// <summary>What a label carries besides the list.</summary>
public class LabelParticularTests
{
    [Theory]
    [InlineData(Authority.Eu, "EU-LAB-01")]
    [InlineData(Authority.Gb, "UK-01")]
    [InlineData(Authority.Us, "US-LAB-02")]
    public void Of_Checklist_NamesTheResponsiblePersonOfTheMarket(Authority law, string rule)
    {
        var draft = Draft(law, Cream, ("water", 100));

        draft.Checklist.Single(p => p.Rule == rule).SuppliedBy.ShouldBe(ParticularSupplier.ResponsiblePerson);
        draft.Checklist.ShouldContain(p => p.SuppliedBy == ParticularSupplier.Draft);
        draft.Rules.Select(r => r.Id).ShouldContain(rule);
    }

    // LABEL.md, 2: responsible person, content, durability, period after opening, precautions, batch, function.
    [Fact]
    public void Of_EuropeanChecklist_HasEveryParticularOfTheRules() =>
        Draft(Authority.Eu, Cream, ("water", 100)).Checklist.Select(p => p.Rule).ShouldBe(
            ["EU-ING-01", "EU-LAB-01", "EU-LAB-02", "EU-LAB-03", "EU-LAB-05", "EU-LAB-06", "EU-LAB-09", "EU-LAB-10", "EU-LAB-11", "EU-LAB-12", "EU-LAB-15"]);

    [Fact]
    public void Of_LimitThatIsKept_StillPrintsItsWarning()
    {
        // LABEL.md, 5: warnings apply at any permitted level unless the row says above.
        var salicylic = Rules.Limit("salicylic", 0.5m, new RegulatedMember { Name = "salicylic acid", InciName = "Salicylic Acid" }) with
        {
            Warning = "Not to be used for children under 3 years of age",
            Locator = "entry 3",
        };
        var release = Rules.Release([.. Shelf, Named("salicylic-acid", IngredientKind.Preservative, "Salicylic Acid")], [salicylic]);

        var warning = Draft(release, Authority.Eu, Cream, ("water", 99.9m), ("salicylic-acid", 0.1m)).Warnings.ShouldHaveSingleItem();

        (warning.Text, warning.Because, warning.Entry, warning.Authority).ShouldBe(("Not to be used for children under 3 years of age", "salicylic", "entry 3", Authority.Eu));
        warning.Ingredients.ShouldBe(["salicylic-acid"]);
    }

    [Fact]
    public void Of_WarningAboveAShare_IsPrintedAboveItOnly()
    {
        var limit = Rules.Limit("releaser", 1, new RegulatedMember { Name = "releaser", InciName = "Releaser" }) with { Warning = "words", WarningAbove = 0.1m };
        var release = Rules.Release([.. Shelf, Named("releaser", IngredientKind.Preservative, "Releaser")], [limit]);

        Draft(release, Authority.Eu, Cream, ("water", 99.9m), ("releaser", 0.1m)).Warnings.ShouldBeEmpty();
        Draft(release, Authority.Eu, Cream, ("water", 99.8m), ("releaser", 0.2m)).Warnings.ShouldHaveSingleItem();
    }

    [Fact]
    public void Of_Notes_SayThatNothingLostIsGuessed() =>
        Draft(Authority.Eu, Cream, ("water", 100)).Notes.ShouldContain(n => n.Contains("evaporates", StringComparison.Ordinal));

    [Fact]
    public void Of_AcidThatStaysOnInTheUnitedStates_AdvisesTheSunAlert()
    {
        var release = Release(Named("glycolic-acid", IngredientKind.Active, "Glycolic Acid"));

        Draft(release, Authority.Us, Cream, ("water", 95), ("glycolic-acid", 5)).Warnings.ShouldHaveSingleItem().Authority.ShouldBe(Authority.Opinion);
        Draft(release, Authority.Us, Rules.Soap, ("water", 95), ("glycolic-acid", 5)).Warnings.ShouldBeEmpty();
    }

    [Fact]
    public void Rules_EverySource_IsInTheSeedData()
    {
        LabelRules.All.Select(r => r.Id).ShouldBeUnique();
        LabelRules.Sources.Where(s => SeedCatalogue.Release.FindSource(s) is null).ShouldBeEmpty();
    }
}
