using CsCheck;
using Materia.Chemistry.Rules;

namespace Materia.Tests.Chemistry;

public class GuaranteedBoundsTests
{
    /// <summary>
    /// The five main acids of sunflower oil with the limits of CXS 210 before the 2022 amendment (18:1 14.0 to 39.4, 18:2 48.3 to 74.0):
    /// the worked example gives 116 to 144, against 96 to 163 for adding up the ends as they stand.
    /// </summary>
    [Fact]
    public void Linear_SunflowerLimits_GivesTheWorkedExample()
    {
        double[] low = [5.0, 2.7, 14.0, 48.3, 0];
        double[] high = [7.6, 6.5, 39.4, 74.0, 0.3];
        double[] factors = [0, 0, .. new[] { 1, 2, 3 }.Select(d => IodineFactor.OfTriglyceride(MolarMass.OfAcid(18, d), d))];

        var bounds = GuaranteedBounds.Linear(factors, low, high, 100).ShouldNotBeNull();

        // Half a unit: the example is printed in whole numbers.
        bounds.Low.ShouldBe(116, 0.5);
        bounds.High.ShouldBe(144, 0.5);
        factors.Zip(low, (f, x) => f * x).Sum().ShouldBe(96, 0.5);
        factors.Zip(high, (f, x) => f * x).Sum().ShouldBe(163, 0.5);
    }

    [Fact]
    public void Linear_ImpossibleLimits_GivesNothing()
    {
        GuaranteedBounds.Linear([1, 1], [60, 50], [70, 60], 100).ShouldBeNull("the least shares add up to 110");
        GuaranteedBounds.Linear([1, 1], [0, 0], [40, 50], 100).ShouldBeNull("the greatest shares add up to 90");
    }

    [Fact]
    public void Linear_ReversedLimits_Throws() =>
        Should.Throw<ArgumentException>(() => GuaranteedBounds.Linear([1, 1], [10, 0], [5, 100], 100));

    [Fact]
    public void Linear_RandomComposition_LiesBetweenTheBounds() => Feasible.Sample(box =>
    {
        var y = Dot(box.Factors, box.Inside);

        var bounds = GuaranteedBounds.Linear(box.Factors, box.Low, box.High, box.Inside.Sum()).ShouldNotBeNull();

        y.ShouldBeInRange(bounds.Low - 1e-9, bounds.High + 1e-9);
    });

    [Fact]
    public void Linear_TwoShares_EqualsTrying()
    {
        // With two shares the second follows from the first, so the extremes can be found by trying the ends.
        Gen.Double[0, 50].Select(Gen.Double[0, 50], Gen.Double[0, 5], Gen.Double[0, 5]).Sample((a, b, f, g) =>
        {
            double[] low = [a, b];
            double[] high = [a + 60, b + 60];
            var ends = new[] { Math.Max(low[0], 100 - high[1]), Math.Min(high[0], 100 - low[1]) }.Select(x => (f * x) + (g * (100 - x))).ToList();

            var bounds = GuaranteedBounds.Linear([f, g], low, high, 100).ShouldNotBeNull();

            bounds.Low.ShouldBe(ends.Min(), 1e-9);
            bounds.High.ShouldBe(ends.Max(), 1e-9);
        });
    }

    [Fact]
    public void Ratio_RandomComposition_LiesBetweenTheBoundsAndTouchesThem() => Feasible.Sample(box =>
    {
        var masses = box.Factors.Select(f => 200 + (10 * f)).ToArray();
        var numerators = box.Factors.Zip(masses, (f, m) => f / m).ToArray();
        var denominators = masses.Select(m => 1 / m).ToArray();

        var (low, high) = GuaranteedBounds.Ratio(numerators, denominators, box.Low, box.High, box.Inside.Sum()).ShouldNotBeNull();

        var mean = Dot(numerators, box.Inside) / Dot(denominators, box.Inside);
        mean.ShouldBeInRange(low - 1e-9, high + 1e-9);

        // At the bound λ the best corner of a − λ·b is worth nought: that is what makes it exact.
        var atLow = GuaranteedBounds.Linear([.. numerators.Zip(denominators, (a, b) => a - (low * b))], box.Low, box.High, box.Inside.Sum()).ShouldNotBeNull();
        var atHigh = GuaranteedBounds.Linear([.. numerators.Zip(denominators, (a, b) => a - (high * b))], box.Low, box.High, box.Inside.Sum()).ShouldNotBeNull();
        atLow.Low.ShouldBe(0, 1e-9);
        atHigh.High.ShouldBe(0, 1e-9);
    });

    private static readonly Gen<(double[] Factors, double[] Low, double[] High, double[] Inside)> Feasible =
        Gen.Select(Gen.Double[0, 3], Gen.Double[0, 20], Gen.Double[0, 20], Gen.Double[0, 1]).Array[1, 12].Select(shares => (
            shares.Select(s => s.Item1).ToArray(),
            shares.Select(s => s.Item2).ToArray(),
            shares.Select(s => s.Item2 + s.Item3).ToArray(),
            shares.Select(s => s.Item2 + (s.Item3 * s.Item4)).ToArray())).Where(box => box.Item4.Sum() > 1);

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();
}
