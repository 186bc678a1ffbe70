using Materia.Catalogue;
using Materia.Catalogue.Needs;
using Materia.Formulation.Needs;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Needs;

/// <summary>Needs put together.</summary>
public class ResolvedNeedsTests
{
    private static Release Release => SeedCatalogue.Release;

    [Fact]
    public void Of_EveryNeedAlone_ContradictsNothing() =>
        Release.Content.Needs.Where(n => ResolvedNeeds.Of([n.Id], Release).Contradictions.Count > 0).ShouldBeEmpty();

    /// <summary>A need that shut out all of a kind that it favours would give no formula.</summary>
    [Fact]
    public void Of_EveryNeedAlone_LeavesSomethingToFavour()
    {
        foreach (var need in Release.Content.Needs)
        {
            var resolved = ResolvedNeeds.Of([need.Id], Release);
            foreach (var favoured in resolved.Preferences.Where(p => p.Favoured))
            {
                Release.Content.Ingredients.Any(i => favoured.Scope.Holds(i) && !resolved.Excludes(i)).ShouldBeTrue($"{need.Id}: {favoured.Scope.Text}");
            }
        }
    }

    [Fact]
    public void Of_OppositeNeeds_NamesBoth() =>
        ResolvedNeeds.Of(["oily-skin", "dry-skin"], Release).Contradictions.ShouldContain(c => c.Needs.SequenceEqual(new[] { "oily-skin", "dry-skin" }) && c.Message.Contains("opposites"));

    /// <summary>A fine head of hair in the heat: at most 3 % solid at 32 °C for the one, at least 5 % for the other.</summary>
    [Fact]
    public void Of_RangesApart_KeepsBothAndNamesThem()
    {
        var resolved = ResolvedNeeds.Of(["fine-strands", "hot-climate"], Release);

        resolved.Targets.Count(t => t.Property == TargetProperty.SolidContent && t.Temperature == 32).ShouldBe(2);
        resolved.Contradictions.ShouldContain(c => c.Needs.Contains("fine-strands") && c.Needs.Contains("hot-climate") && c.Message.Contains("solid-content at 32 Cel"));
    }

    [Fact]
    public void Of_RangesThatOverlap_CutsThem()
    {
        var target = ResolvedNeeds.Of(["fine-strands", "low-porosity"], Release).Targets.Single(t => t.Property == TargetProperty.SolidContent && t.Temperature == 32);

        target.High.ShouldBe(3, "the stricter of 3 and 5 %");
        target.Weight.ShouldBe(2, "the greater weight");
        target.Because.Select(b => b.Need).ShouldBe(["fine-strands", "low-porosity"]);
    }

    /// <summary>Butters suit coils, and hot rooms ask for an antioxidant; of one set favoured and avoided both are named.</summary>
    [Fact]
    public void Of_FavouredAndAvoided_IsNamed() =>
        ResolvedNeeds.Of(["low-porosity", "coily"], Release).Contradictions
            .ShouldContain(c => c.Message.StartsWith("group:sealing-hair-oils is favoured for coily and avoided for low-porosity", StringComparison.Ordinal));

    [Fact]
    public void Of_Vegan_ExcludesBeeAndWoolWax()
    {
        var vegan = ResolvedNeeds.Of(["vegan"], Release);

        vegan.Excludes(SeedCatalogue.Ingredient("beeswax")).ShouldBeTrue();
        vegan.Excludes(SeedCatalogue.Ingredient("lanolin")).ShouldBeTrue();
        vegan.Excludes(SeedCatalogue.Ingredient("candelilla-wax")).ShouldBeFalse();
    }

    [Fact]
    public void Of_RepeatedAndUnknownKeys_CountOnceAndAreNamed()
    {
        var once = ResolvedNeeds.Of(["coily"], Release);
        var twice = ResolvedNeeds.Of(["coily", "coily", "purple"], Release);

        twice.Targets.Count.ShouldBe(once.Targets.Count);
        twice.Unknown.ShouldBe(["purple"]);
    }

    [Fact]
    public void Content_EveryReason_HasSourceAndGrade() =>
        Release.Content.Needs.SelectMany(n => n.Effects).ShouldAllBe(e =>
            e.Reason.Length > 20 && Release.FindSource(e.Source) != null && (e.Evidence != Evidence.Published || e.Locator != null));
}
