using Materia.Catalogue;
using Materia.Formulation.Neighbours;
using Materia.Formulation.Scopes;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Neighbours;

/// <summary>What holds for the neighbours of every ingredient of the catalogue.</summary>
public class NeighbourTests
{
    private static Release Release => SeedCatalogue.Release;

    [Fact]
    public void Find_EveryIngredient_IsRankedBoundedAndNotItself()
    {
        foreach (var ingredient in Release.Content.Ingredients)
        {
            var found = NeighbourSearch.Of(Release).Find(ingredient.Id, new() { Limit = 10 });

            found.Items.Count.ShouldBe(Math.Min(10, found.Total), ingredient.Id);
            found.Items.ShouldAllBe(n => n.Id != ingredient.Id && n.Coverage >= 0 && n.Coverage <= 1 && n.Why.Count > 0);
            found.Items.Select(n => n.Distance + n.PurposeGap).ShouldBe(found.Items.Select(n => n.Distance + n.PurposeGap).Order(), ingredient.Id);
        }
    }

    /// <summary>Without a figure in common the distance is the three steps of what is missing: silence is no agreement.</summary>
    [Fact]
    public void Find_NothingCompared_IsAsFarAsThingsThatDiffer()
    {
        var seen = 0;
        foreach (var ingredient in Release.Content.Ingredients)
        {
            foreach (var neighbour in NeighbourSearch.Of(Release).Find(ingredient.Id, new() { Limit = 50 }).Items.Where(n => n.Coverage == 0))
            {
                seen++;
                neighbour.Distance.ShouldBe(3, 1e-9, $"{ingredient.Id} and {neighbour.Id}; a sum of equal terms, so within rounding");
                neighbour.Differences.ShouldBeEmpty();
            }
        }

        seen.ShouldBeGreaterThan(0, "the catalogue has gaps, or this test shows nothing");
    }

    [Fact]
    public void Find_MissingFigures_AreNamed()
    {
        foreach (var neighbour in NeighbourSearch.Of(Release).Find("cocoa-butter", new() { Limit = 50 }).Items)
        {
            (neighbour.Coverage < 1).ShouldBe(neighbour.NotCompared.Count > 0, neighbour.Id);
            neighbour.Differences.ShouldAllBe(d => d.Asked == null || Math.Abs(d.Candidate!.Value - d.Asked.Value - d.Difference!.Value) < 1e-9);
        }
    }

    [Fact]
    public void Find_Pantry_GivesOnlyThat()
    {
        var found = NeighbourSearch.Of(Release).Find("mango-butter", new() { Pantry = ["shea-butter", "cocoa-butter", "xanthan-gum"] });

        found.Items.Select(n => n.Id).ShouldBe(["shea-butter", "cocoa-butter"], ignoreOrder: true, "a gum has nothing in common with a butter");
    }

    [Fact]
    public void Find_Exclusions_Hold()
    {
        var scopes = new[] { "animal", "tree-nut", "palm" }.Select(w => IngredientScope.TryParseOrigin(w, out var s) ? s! : throw new InvalidOperationException(w)).ToList();

        var found = NeighbourSearch.Of(Release).Find("olive-oil", new() { Excluded = scopes, MaxComedogenic = 2, Limit = 50 });

        found.Total.ShouldBeGreaterThan(10);
        var ingredients = found.Items.Select(n => Release.FindIngredient(n.Id)!).ToList();
        ingredients.ShouldAllBe(i => i.Origin == null || (i.Origin.From != OriginKind.Animal && !i.Origin.AllergenFamilies.Contains(AllergenFamily.TreeNut)));
        ingredients.ShouldAllBe(i => i.Origin == null || i.Origin.Species == null || !i.Origin.Species.StartsWith("Elaeis", StringComparison.Ordinal));
        ingredients.ShouldAllBe(i => i.Comedogenic.All(c => c.High <= 2));
    }

    /// <summary>Sodium benzoate holds 84.7 % benzoic acid by molar mass (122.12/144.10), so less of the acid does; the record's ratio says so.</summary>
    [Fact]
    public void Find_AcidForItsSalt_SwapRatioFollowsMolarMass() =>
        NeighbourSearch.Of(Release).Find("sodium-benzoate", new() { Pantry = ["benzoic-acid"] }).Items.Single()
            .SwapRatio.ShouldNotBeNull().Value.ShouldBe(122.12m / 144.10m, 0.001m, "the stored ratio has three decimals");

    [Fact]
    public void Find_NutOil_WarnsOfIt() =>
        NeighbourSearch.Of(Release).Find("olive-oil", new() { Pantry = ["hazelnut-oil"] }).Items.Single()
            .Warnings.ShouldContain(w => w.Kind == NeighbourWarningKind.AllergenFamily && w.Text.Contains("tree-nut"));

    [Fact]
    public void Find_SameFamily_WarnsOfIt() =>
        NeighbourSearch.Of(Release).Find("german-chamomile-oil", new() { Pantry = ["roman-chamomile-oil"] }).Items.Single()
            .Warnings.ShouldContain(w => w.Kind == NeighbourWarningKind.BotanicalFamily && w.Text.Contains("Asteraceae"));

    [Fact]
    public void Find_ComedogenicGrade_ComesWithCaveat()
    {
        var graded = NeighbourSearch.Of(Release).Find("shea-butter", new() { Limit = 50 }).Items.SelectMany(n => n.Warnings)
            .Where(w => w.Kind == NeighbourWarningKind.Comedogenic).ToList();

        graded.ShouldNotBeEmpty();
        graded.ShouldAllBe(w => w.Text.EndsWith(ComedogenicNote.Caveat, StringComparison.Ordinal));
    }

    [Fact]
    public void Find_UnknownId_Throws() =>
        Should.Throw<ArgumentException>(() => NeighbourSearch.Of(Release).Find("no-such-thing", new()));

    [Theory]
    [InlineData("kind:clay", "kaolin", true)]
    [InlineData("group:stiff-waxes", "candelilla-wax", true)]
    [InlineData("origin:animal", "beeswax", true)]
    [InlineData("species:palm", "palm-oil", true)]
    [InlineData("species:palm", "coconut-oil", false)]
    [InlineData("ingredient:kaolin", "bentonite", false)]
    [InlineData("charge:cationic", "cetrimonium-chloride", true)]
    public void Scope_Word_HoldsWhatItNames(string word, string id, bool holds)
    {
        IngredientScope.TryParse(word, out var scope).ShouldBeTrue();
        scope!.Holds(SeedCatalogue.Ingredient(id)).ShouldBe(holds);
    }

    [Theory]
    [InlineData("")]
    [InlineData("clay")]
    [InlineData("kind:")]
    [InlineData("kind:mud")]
    [InlineData("colour:red")]
    public void Scope_OtherWord_IsRefused(string word) => IngredientScope.TryParse(word, out _).ShouldBeFalse();
}
