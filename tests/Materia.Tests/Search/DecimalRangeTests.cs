using CsCheck;
using Materia.Search;

namespace Materia.Tests.Search;

public class DecimalRangeTests
{
    [Theory]
    [InlineData("28..36")]
    [InlineData("-5..0.5")]
    [InlineData("40..")]
    [InlineData("..2")]
    public void TryParse_Range_ReadsWhatIsWritten(string text)
    {
        DecimalRange.TryParse(text, out var range).ShouldBeTrue();
        range.ToString().ShouldBe(text);
        range.IsReversed.ShouldBeFalse();
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("..")]
    [InlineData("28")]
    [InlineData("28-36")]
    [InlineData("28,5..36")]
    [InlineData("1e3..2e3")]
    [InlineData("a..b")]
    [InlineData(" 1..2")]
    [InlineData("NaN..")]
    [InlineData("..1..2")]
    [InlineData("1..99999999999999999999999999999999")]
    public void TryParse_AnythingElse_ReturnsFalse(string? text) => DecimalRange.TryParse(text, out _).ShouldBeFalse();

    [Fact]
    public void TryParse_LowAboveHigh_IsReversed()
    {
        DecimalRange.TryParse("36..28", out var range).ShouldBeTrue();
        range.IsReversed.ShouldBeTrue();
    }

    [Fact]
    public void Search_ReversedOrOpenRange_IsAFaultOfItsMember()
    {
        Fault(new(36, 28)).Member.ShouldBe("requiredHlb");
        Fault(new(null, null)).Member.ShouldBe("requiredHlb");

        static SearchFault Fault(DecimalRange range) =>
            Sample.Index.Search(new SearchRequest { Properties = new Dictionary<PropertyGroup, DecimalRange> { [PropertyGroup.RequiredHlb] = range } }).Faults.ShouldHaveSingleItem();
    }

    [Fact]
    public void OverlapsAndContains_AnyRanges_AgreeWithTryingEveryPoint()
    {
        // Over whole numbers a range is a set of points; -50 and 50 stand for endless, since no end goes beyond -9 to 9.
        var end = Gen.OneOf(Gen.Int[-9, 9].Select(i => (decimal?)i), Gen.Const((decimal?)null));
        Gen.Select(end, end, end, end).Where((a, b, c, d) => !(a > b) && !(c > d)).Sample((low, high, storedLow, storedHigh) =>
        {
            var asked = Points(low, high);
            var stored = Points(storedLow, storedHigh);
            var range = new DecimalRange(low, high);

            range.Overlaps(storedLow, storedHigh).ShouldBe(asked.Overlaps(stored));
            range.Contains(storedLow, storedHigh).ShouldBe(stored.IsSubsetOf(asked));
        });

        static HashSet<int> Points(decimal? low, decimal? high) => [.. Enumerable.Range(-50, 101).Where(p => !(p < low) && !(p > high))];
    }

    [Fact]
    public void TryParse_NameOfAGroup_FindsTheGroup()
    {
        PropertyGroups.All.Select(g => g.Name()).ShouldBe(["melting", "iodine", "saponification", "density", "viscosity", "requiredHlb", "comedogenic", "solidAt20", "solidAt32", "clearPoint",
                "hlb", "cationExchangeCapacity", "swelling", "shelfLife", "effectivePh", "molarMass", "flashPoint"]);
        foreach (var group in PropertyGroups.All)
        {
            PropertyGroups.TryParse(group.Name(), out var found).ShouldBeTrue();
            found.ShouldBe(group);
        }

        PropertyGroups.TryParse("required-hlb", out _).ShouldBeFalse();
    }
}
