using CsCheck;
using Materia.Formulation.Substituting;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Substituting;

public class GeneratedRequestTests
{
    // Two dozen here; a thousand are run by the measurements ("substitutions").
    private const int Requests = 24;

    [Fact]
    public void Find_GeneratedRequests_NoneOffAHundredOrOutsideLimits() =>
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var request = GeneratedRequests.Of(seed, SeedCatalogue.Release);
                var (answer, faults) = SubstitutionFinder.Find(request, SeedCatalogue.Release, Substitutions.Day, TimeProvider.System, TestContext.Current.CancellationToken);
                faults.ShouldBeEmpty();
                GeneratedRequests.Wrong(request, answer!, SeedCatalogue.Release, Substitutions.Day).ShouldBeEmpty();
            },
            iter: Requests,
            threads: 1);
}
