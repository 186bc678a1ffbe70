using CsCheck;
using Materia.Formulation.Batches;

namespace Materia.Tests.Formulation;

public sealed class LargestRemainderTests
{
    private static readonly Gen<List<decimal>> Shares = Gen.Int[0, 1_000_000].Select(n => n / 1000m).List[1, 30].Where(l => l.Sum() > 0);

    [Fact]
    public void Apportion_AnyShares_AddsUpExactlyAndStaysWithinOneStep() =>
        Gen.Select(Shares, Gen.Long[0, 1_000_000_000]).Sample((shares, steps) =>
        {
            var parts = LargestRemainder.Apportion(shares, steps);
            var total = shares.Sum();
            return parts.Sum() == steps && parts.Zip(shares).All(p => Math.Abs(p.First - (p.Second * steps / total)) < 1);
        });

    [Fact]
    public void Apportion_Shuffled_GivesEachShareTheSameUnlessTied() =>
        Gen.Select(Gen.Int[1, 1_000_000].HashSet[2, 20], Gen.Long[0, 1_000_000], Gen.Int).Sample((distinct, steps, seed) =>
        {
            decimal[] shares = [.. distinct.Select(n => (decimal)n)];
            decimal[] shuffled = [.. shares];
            new Random(seed).Shuffle(shuffled);
            var first = shares.Zip(LargestRemainder.Apportion(shares, steps)).ToDictionary(p => p.First, p => p.Second);
            return shuffled.Zip(LargestRemainder.Apportion(shuffled, steps)).All(p => first[p.First] == p.Second);
        });

    // Worked by hand: 10 steps among 1.5 : 2.5 : 6 owe 1.5, 2.5 and 6; the step left over goes to the larger of the tied shares.
    [Fact]
    public void Apportion_TiedRemainders_GoToTheLargerShare() =>
        LargestRemainder.Apportion([1.5m, 2.5m, 6m], 10).ShouldBe([1, 3, 6]);

    [Fact]
    public void Apportion_TiedSharesToo_GoToTheEarlier() =>
        LargestRemainder.Apportion([1m, 1m, 1m], 10).ShouldBe([4, 3, 3]);

    [Fact]
    public void Apportion_WholeSteps_ChangesNothing() =>
        LargestRemainder.Apportion([30m, 22.5m, 47.5m], 2000).ShouldBe([600, 450, 950]);

    [Fact]
    public void Apportion_AllNought_Throws() => Should.Throw<ArgumentException>(() => LargestRemainder.Apportion([0m, 0m], 10));

    [Fact]
    public void Apportion_NegativeShare_Throws() => Should.Throw<ArgumentException>(() => LargestRemainder.Apportion([2m, -1m], 10));
}
