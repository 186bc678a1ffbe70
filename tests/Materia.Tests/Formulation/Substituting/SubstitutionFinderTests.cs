using System.Text.Json;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Formulation;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Substituting;

public class SubstitutionFinderTests
{
    private static readonly Materia.Formulation.Formula Balm = Substitutions.Formula(("mango-butter", 30.05m), ("shea-butter", 19.95m), ("coconut-oil", 15), ("olive-oil", 30), ("kaolin", 5));

    [Fact]
    public void Find_Proposals_AreWholeFormulasWithoutTheIngredient()
    {
        var answer = Substitutions.Answer(Substitutions.Request(Balm, "mango-butter"));

        answer.Proposals.Count.ShouldBe(3);
        foreach (var proposal in answer.Proposals)
        {
            proposal.Formula.Lines.Sum(l => l.Percent).ShouldBe(100);
            proposal.Formula.Share("mango-butter").ShouldBe(0);
            proposal.Formula.Share("kaolin").ShouldBe(5);
            NormalisedFormula.Create(proposal.Formula, SeedCatalogue.Release).Faults.ShouldBeEmpty();
            proposal.Differences.Select(d => d.Property).ShouldContain("solid-content at 20 Cel");
        }

        answer.Proposals.Select(p => p.Distance).ShouldBeInOrder();
    }

    [Fact]
    public void Find_TheSameRequest_GivesTheSameAnswer()
    {
        string Once() => JsonSerializer.Serialize(Substitutions.Answer(Substitutions.Request(Balm, "mango-butter")), FormulationJson.Options);

        Once().ShouldBe(Once());
    }

    [Fact]
    public void Find_LockedLine_KeepsItsShare() =>
        Substitutions.Answer(Substitutions.Request(Balm, "mango-butter") with { Locked = [new(null, "coconut-oil"), new(3, null)] })
            .Proposals.ShouldAllBe(p => p.Formula.Share("coconut-oil") == 15 && p.Formula.Share("olive-oil") == 30);

    [Fact]
    public void Find_Exclusions_DoNotComeIn() =>
        Substitutions.Answer(Substitutions.Request(Balm, "mango-butter") with { Exclude = new() { Scopes = ["kind:butter", "ingredient:palm-oil"] } })
            .Proposals.SelectMany(p => p.Formula.Lines).Select(l => SeedCatalogue.Ingredient(l.Ingredient!))
            .Where(i => i.Kind == IngredientKind.Butter || i.Id == "palm-oil").Select(i => i.Id).Distinct().ShouldBe(["shea-butter"]);

    [Fact]
    public void Find_NothingNear_SaysSoAndGivesTheNearest()
    {
        var answer = Substitutions.Answer(Substitutions.Request(Substitutions.Formula(("cocoa-butter", 60), ("beeswax", 40)), "cocoa-butter", "flaxseed-oil") with { Locked = [new(1, null)] });

        answer.Proposals.Count.ShouldBe(1);
        answer.Proposals[0].Distance.ShouldBeGreaterThan(1);
        answer.Note.ShouldNotBeNull().ShouldContain("Nothing comes near");
    }

    // A made-up limit: no more than 4 % of cocoa butter, which is what the pantry offers.
    [Fact]
    public void Find_LimitInTheWay_IsKept()
    {
        var limited = new Release(1, DateTimeOffset.UnixEpoch, "limited", SeedCatalogue.Release.Content with
        {
            Limits =
            [
                new()
                {
                    Id = "made-up", Substance = "cocoa butter", Authority = Authority.Eu, Kind = LimitKind.Restricted, MaxPercent = 4,
                    Members = [new RegulatedMember { Name = "cocoa butter", Ingredient = "cocoa-butter" }], Scope = new(), ScopeText = "all", Evidence = Evidence.Memory, Source = "recalled",
                },
            ],
        });

        var free = Substitutions.Answer(Substitutions.Request(Balm, "mango-butter", "cocoa-butter", "coconut-oil", "kokum-butter"));
        var kept = Substitutions.Answer(Substitutions.Request(Balm, "mango-butter", "cocoa-butter", "coconut-oil", "kokum-butter"), limited);

        free.Proposals.Max(p => p.Formula.Share("cocoa-butter")).ShouldBeGreaterThan(4);
        kept.Proposals.ShouldNotBeEmpty();
        kept.Proposals.ShouldAllBe(p => p.Formula.Share("cocoa-butter") <= 4);
    }

    [Fact]
    public void Find_NoTime_IsCutWithWhatItHas()
    {
        var answer = Substitutions.Answer(Substitutions.Request(Balm, "mango-butter") with { TimeBudget = 0.000001m });

        answer.Cut.ShouldBeTrue();
        answer.Proposals.ShouldAllBe(p => p.Formula.Lines.Sum(l => l.Percent) == 100);
    }

    [Fact]
    public void Find_Cancelled_Stops()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();

        Should.Throw<OperationCanceledException>(() => Materia.Formulation.Substituting.SubstitutionFinder.Find(
            Substitutions.Request(Balm, "mango-butter"), SeedCatalogue.Release, Substitutions.Day, TimeProvider.System, cancelled.Token));
    }

    [Fact]
    public void Find_Clay_IsReplacedByAPowderAtTheSameShare()
    {
        var proposal = Substitutions.Answer(Substitutions.Request(Balm, "kaolin")).Proposals[0].Formula;

        proposal.Lines.Count.ShouldBeGreaterThanOrEqualTo(5);
        proposal.Share("mango-butter").ShouldBe(30.05m);
        proposal.Lines.Where(l => Balm.Lines.All(o => o.Ingredient != l.Ingredient)).Sum(l => l.Percent).ShouldBe(5);
    }
}
