using Materia.Formulation.Optimising;
using Materia.Formulation.Substituting;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Substituting;

/// <summary>Small cases against every replacement on a grid of half a percent: the search is within 1 % of the grid's best, or better.</summary>
public class GridTests
{
    private const double Within = 1.01;

    // An objective of 1e-4 is a ten-thousandth of a noticeable step: two such formulas are the same.
    private const double Nothing = 1e-4;

    [Theory]
    [InlineData("mango-butter", "kokum-butter", "cocoa-butter", "sal-butter", "coconut-oil")]
    [InlineData("shea-butter", "mango-butter", "illipe-butter", "sunflower-oil", "palm-oil")]
    public void Run_EveryOneAndTwoOnTheGrid_IsNoBetter(string missing, params string[] pantry)
    {
        var request = Substitutions.Request(Substitutions.Formula((missing, 35), ("olive-oil", 60), ("beeswax", 5)), missing, pantry) with
        {
            Locked = [new(1, null), new(2, null)],
            Limit = 10,
        };
        var (search, objective, original) = Search(request);
        var best = double.PositiveInfinity;
        for (var a = 3; a < original.Length; a++)
        {
            for (var b = a; b < original.Length; b++)
            {
                for (var tenths = 5; tenths <= 350; tenths += 5)
                {
                    double[] x = [.. original];
                    x[0] = 0;
                    x[a] += tenths / 10.0;
                    x[b] += 35 - (tenths / 10.0);
                    best = Math.Min(best, objective.At(x));
                }
            }
        }

        search.Run()[0].Cost.ShouldBeLessThanOrEqualTo((best * Within) + Nothing);
    }

    [Fact]
    public void Run_OneReplacementAndOneFreeLineOnTheGrid_IsNoBetter()
    {
        var request = Substitutions.Request(Substitutions.Formula(("beeswax", 15), ("olive-oil", 70), ("shea-butter", 15)), "beeswax", "candelilla-wax", "carnauba-wax") with
        {
            Locked = [new(2, null)],
        };
        var (search, objective, original) = Search(request);
        decimal[] shares = [.. original.Select(s => (decimal)s)];
        var best = double.PositiveInfinity;
        for (var oil = 700; oil <= 845; oil += 5)
        {
            for (var a = 0; a <= 850 - oil; a += 5)
            {
                // The search keeps to the trade's swap ratios, so the grid does.
                if (a / 10.0 > search.MostOf(0, 3, shares) || (850 - oil - a) / 10.0 > search.MostOf(0, 4, shares))
                {
                    continue;
                }

                double[] x = [.. original];
                (x[0], x[1], x[3], x[4]) = (0, oil / 10.0, a / 10.0, (850 - oil - a) / 10.0);
                best = Math.Min(best, objective.At(x));
            }
        }

        search.Run()[0].Cost.ShouldBeLessThanOrEqualTo((best * Within) + Nothing);
    }

    private static (SubstitutionSearch Search, Objective Objective, double[] Original) Search(SubstitutionRequest request)
    {
        var (found, faults) = SubstitutionReading.Read(request, SeedCatalogue.Release, Substitutions.Day);
        faults.ShouldBeEmpty();
        var search = new SubstitutionSearch(found!, new Deadline(TimeProvider.System, TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken));
        decimal[] original = [.. Enumerable.Range(0, search.Columns.Count).Select(search.OriginalShare)];
        return (search, search.ObjectiveOf(0, original), [.. original.Select(s => (double)s)]);
    }
}
