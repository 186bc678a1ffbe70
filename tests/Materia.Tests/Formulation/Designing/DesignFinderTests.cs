using Materia.Catalogue;
using Materia.Catalogue.Needs;
using Materia.Formulation;
using Materia.Formulation.Designing;
using Materia.Formulation.Optimising;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Designing;

public class DesignFinderTests
{
    private static readonly DesignRequest Balm = new()
    {
        Pantry = [.. new[] { "shea-butter", "cocoa-butter", "coconut-oil", "sunflower-oil", "olive-oil", "beeswax", "kaolin" }.Select(id => new PantryItem { Ingredient = id, PricePerKilogram = id.Length })],
        Targets = [Target(BlendProperty.SolidContent, 25, 35, 20), Target(BlendProperty.Oxidisability, null, 2)],
        Constraints = [new() { Ingredient = "beeswax", MinPercent = 2, MaxPercent = 6 }, new() { Kind = IngredientKind.Butter, MinPercent = 20.5m }, new() { Ingredient = "kaolin", MinPercent = 3, MaxPercent = 3 }],
        Ingredients = new() { Min = 3, Max = 5 },
        TimeBudget = 10,
    };

    public static TheoryData<DesignRequest, string, string> Wrong => new()
    {
        { Balm with { Pantry = [] }, "/pantry", "empty" },
        { Balm with { Pantry = [.. Balm.Pantry, Balm.Pantry[0]] }, "/pantry/7/ingredient", "already" },
        { Balm with { Targets = [] }, "/targets", "Give 1 to" },
        { Balm with { Targets = [new() { Temperature = 20, Low = 1 }] }, "/targets/0/property", "Say what" },
        { Balm with { Targets = [Target(BlendProperty.SolidContent, 35, 25, 20)] }, "/targets/0/low", "Exchange" },
        { Balm with { Targets = [Target(BlendProperty.SolidContent, 25, 35)] }, "/targets/0/temperature", "Give the temperature" },
        { Balm with { Targets = [Target(BlendProperty.Viscosity, 25, 35, 33)] }, "/targets/0/temperature", "choose one" },
        { Balm with { Targets = [Target(BlendProperty.ClearPoint, 40, 45), Target(BlendProperty.ClearPoint, 50, 55)] }, "/targets/1", "no value lies in both" },
        { Balm with { Targets = [Target(BlendProperty.IodineValue, 180, 190)] }, "/targets/0", "cannot be reached" },
        { Balm with { Pantry = [.. Balm.Pantry.Select(p => p with { PricePerKilogram = null })], Targets = [Target(BlendProperty.Cost, null, 5)] }, "/pantry/0/pricePerKilogram", "price" },
        { Balm with { Constraints = [new() { Ingredient = "argan-oil", MinPercent = 5 }] }, "/constraints/0/ingredient", "not in the pantry" },
        { Balm with { Constraints = [new() { Kind = IngredientKind.Silicone, MinPercent = 5 }] }, "/constraints/0/kind", "holds no silicone" },
        { Balm with { Constraints = [new() { Ingredient = "beeswax", Kind = IngredientKind.Wax, MinPercent = 5 }] }, "/constraints/0", "one of the two" },
        { Balm with { Constraints = [new() { Ingredient = "beeswax", MinPercent = 60 }, new() { Ingredient = "shea-butter", MinPercent = 60 }] }, "/constraints/0", "together with the other" },
        { Balm with { Constraints = [new() { Ingredient = "beeswax", MinPercent = 6 }, new() { Kind = IngredientKind.Wax, MaxPercent = 5 }] }, "/constraints/1", "together with the other" },
        { Balm with { Exclude = new() { Scopes = ["kind:wax"] } }, "/constraints/0/ingredient", "shut out by exclude" },
        { Balm with { Ingredients = new() { Min = 6, Max = 5 } }, "/ingredients/min", "contradict" },
        { Balm with { Ingredients = new() { Max = 1 } }, "/ingredients/max", "more than the most" },
        { Balm with { Needs = ["no-such-need"] }, "/needs/0", "not a known need" },
        { Balm with { Needs = ["vegan", "fine-strands", "hot-climate"] }, "/needs/1", "solid-content at 32 Cel" },
        { Balm with { Needs = ["vegan"] }, "/constraints/0/ingredient", "shut out" },
        { Balm with { Use = "no-such-use" }, "/use", "not a known use" },
    };

    [Fact]
    public void Find_Proposals_KeepConstraintsAndMeetTargets()
    {
        var answer = Find(Balm).Answer!;

        answer.Proposals.Count.ShouldBe(3);
        foreach (var proposal in answer.Proposals)
        {
            proposal.Formula.Lines.Sum(l => l.Percent).ShouldBe(100);
            proposal.Formula.Lines.ShouldAllBe(l => l.Percent % 0.1m == 0);
            proposal.Formula.Lines.Count.ShouldBeInRange(3, 5);
            Share(proposal, "beeswax").ShouldBeInRange(2, 6);
            Share(proposal, "kaolin").ShouldBe(3);
            (Share(proposal, "shea-butter") + Share(proposal, "cocoa-butter")).ShouldBeGreaterThanOrEqualTo(20.5m);
            NormalisedFormula.Create(proposal.Formula, SeedCatalogue.Release).Faults.ShouldBeEmpty();
        }

        answer.Proposals[0].Targets.ShouldAllBe(t => t.Met);
        answer.Proposals.Select(p => string.Join(' ', p.Formula.Lines.Select(l => l.Ingredient).Order())).ShouldBeUnique();
    }

    [Fact]
    public void Find_TargetOutOfReachOfTheCrystals_IsReportedAsMissed()
    {
        var answer = Find(Balm with { Targets = [Target(BlendProperty.SolidContent, 95, 100, 40)] }).Answer!;

        answer.Proposals[0].Targets[0].Met.ShouldBeFalse();
        answer.Note.ShouldNotBeNull().ShouldContain("solid-content at 40 Cel");
    }

    /// <summary>Coily hair sets 10 to 45 % solid at 20 °C, which the request's own target decides, and at most 10 % at 32 °C; no tree nuts shuts out almond.</summary>
    [Fact]
    public void Find_Needs_AddTargetsPreferencesAndExclusions()
    {
        var answer = Find(Balm with { Pantry = [.. Balm.Pantry, new() { Ingredient = "sweet-almond-oil", PricePerKilogram = 1 }], Needs = ["coily", "no-tree-nuts"] }).Answer!;

        answer.Needs!.Targets.Count.ShouldBe(2);
        answer.Proposals[0].Targets.Select(t => t.Property).ShouldBe(["solid-content at 20 Cel", "oxidisability", "solid-content at 32 Cel"]);
        answer.Proposals[0].Targets[2].High.ShouldBe(10);
        answer.Proposals.ShouldAllBe(p => Share(p, "sweet-almond-oil") == 0);
    }

    /// <summary>What a need aims at is found among the figures of blends by its word; a ceiling of grades is no figure of a blend.</summary>
    [Fact]
    public void Words_OfWhatNeedsAimAt_AreThoseOfBlends() =>
        KebabCase<TargetProperty>.Words.Where(w => w != "comedogenic").ShouldBeSubsetOf(KebabCase<BlendProperty>.Words);

    [Fact]
    public void Find_NeedsThatContradict_AreDecidedByAnOwnTarget() =>
        Find(Balm with { Needs = ["fine-strands", "hot-climate"], Targets = [.. Balm.Targets, Target(BlendProperty.SolidContent, 1, 8, 32)] })
            .Answer!.Needs!.Contradictions.ShouldNotBeEmpty();

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Find_WrongRequest_NamesTheConflict(DesignRequest request, string place, string words)
    {
        var (answer, faults) = Find(request);

        answer.ShouldBeNull();
        faults.ShouldContain(f => f.Pointer == place && f.Message.Contains(words, StringComparison.Ordinal));
    }

    private static (Design? Answer, IReadOnlyList<FormulaFault> Faults) Find(DesignRequest request) =>
        DesignFinder.Find(request, SeedCatalogue.Release, new(2026, 11, 25), TimeProvider.System, TestContext.Current.CancellationToken);

    private static DesignTarget Target(BlendProperty property, decimal? low, decimal? high, decimal? temperature = null) =>
        new() { Property = property, Low = low, High = high, Temperature = temperature };

    private static decimal Share(DesignProposal proposal, string id) => proposal.Formula.Lines.Where(l => l.Ingredient == id).Sum(l => l.Percent ?? 0);
}
