using Materia.Formulation.Designing;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Optimising;

/// <summary>Linear designs against GLPK, a solver that shares no code with ours.</summary>
public class LinearDesignTests
{
    public static TheoryData<string> Cases => ReferenceProgrammes.Names;

    // GLPK's shares are not rounded. Rounding moves each of the (at most three or four) shares by under 0.1 %, which moves the cost by at
    // most 0.1 % × 19 (the widest gap of prices) = 0.02 per kg, a tenth of a step of 0.2, and the two values by under 0.2 of 10; over three
    // targets that is 0.05 of distance.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Find_LinearTargets_ReachesTheLeastDistanceThatGlpkPrints(string name)
    {
        var (answer, faults) = DesignFinder.Find(
            ReferenceProgrammes.Request(name), SeedCatalogue.Release, new DateOnly(2026, 11, 25), TimeProvider.System, TestContext.Current.CancellationToken);

        faults.ShouldBeEmpty();
        var least = ReferenceProgrammes.LeastDistance(name);
        answer!.Proposals[0].Distance.ShouldBeInRange(least - 0.001, least + 0.05);
        answer.Proposals.ShouldAllBe(p => p.Formula.Lines.Sum(l => l.Percent) == 100);
    }
}
