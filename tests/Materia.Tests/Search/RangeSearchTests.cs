using Materia.Catalogue;
using Materia.Search;

namespace Materia.Tests.Search;

/// <summary>Stored in the sample: cocoa 31..35 and slip 30..34, mango 34..38, shea 32..45, sal from 36 (open above), cupuacu up to 34 (open below).</summary>
public class RangeSearchTests
{
    [Theory]
    [InlineData("..30")] // the slip point's lower end touches
    [InlineData("30..30")]
    [InlineData("35..35")]
    public void Search_OverlapAtAnEnd_FindsIt(string range) => Sample.InRange(PropertyGroup.Melting, range).ShouldContain("cocoa-butter");

    [Theory]
    [InlineData("..29.9")]
    [InlineData("35.1..")]
    public void Search_OverlapJustBeyondAnEnd_LeavesItOut(string range) => Sample.InRange(PropertyGroup.Melting, range).ShouldNotContain("cocoa-butter");

    [Theory]
    [InlineData("30..35")]
    [InlineData("..35")]
    [InlineData("30..")]
    public void Search_WithinToTheEnds_FindsIt(string range) => Sample.InRange(PropertyGroup.Melting, range, RangeMatch.Within).ShouldContain("cocoa-butter");

    [Theory]
    [InlineData("30.1..35")] // the slip point leaves it below
    [InlineData("30..34.9")] // the melting range leaves it above
    public void Search_WithinLeftByOneOfTheFigures_LeavesItOut(string range) =>
        Sample.InRange(PropertyGroup.Melting, range, RangeMatch.Within).ShouldNotContain("cocoa-butter");

    [Fact]
    public void Search_MeltsBelowSkinTemperature_TellsOverlapFromWithin()
    {
        Sample.InRange(PropertyGroup.Melting, "..35").ShouldBe(["cocoa-butter", "coconut-oil", "cupuacu-butter", "mango-butter", "shea-butter"]);
        Sample.InRange(PropertyGroup.Melting, "..35", RangeMatch.Within).ShouldBe(["cocoa-butter", "coconut-oil", "cupuacu-butter"]);
    }

    [Fact]
    public void Search_StoredRangeOpenAbove_OverlapsAnyRangeAboveItsEndButLiesInsideOpenOnesOnly()
    {
        Sample.InRange(PropertyGroup.Melting, "36..36").ShouldContain("sal-butter");
        Sample.InRange(PropertyGroup.Melting, "100..200").ShouldBe(["sal-butter"]);
        Sample.InRange(PropertyGroup.Melting, "..35.9").ShouldNotContain("sal-butter");
        Sample.InRange(PropertyGroup.Melting, "36..", RangeMatch.Within).ShouldContain("sal-butter");
        Sample.InRange(PropertyGroup.Melting, "36..200", RangeMatch.Within).ShouldNotContain("sal-butter");
    }

    [Fact]
    public void Search_NoFigure_NeverMatches()
    {
        Sample.InRange(PropertyGroup.Melting, "-1000..1000").ShouldNotContain("murumuru-butter");
        Sample.InRange(PropertyGroup.Melting, "-1000..", RangeMatch.Within).ShouldNotContain("murumuru-butter");
    }

    [Fact]
    public void Search_SeveralStatementsOfOneProperty_LooksAtTheUsedOne()
    {
        Sample.InRange(PropertyGroup.Melting, "60..60").ShouldNotContain("coconut-oil");
        Sample.InRange(PropertyGroup.Melting, "23..23").ShouldBe(["coconut-oil", "cupuacu-butter"]);
    }

    [Theory]
    [InlineData(PropertyGroup.Iodine, "100..", new[] { "sweet-almond-oil" })]
    [InlineData(PropertyGroup.Saponification, "200..", new[] { "coconut-oil" })]
    [InlineData(PropertyGroup.RequiredHlb, "14..14", new[] { "castor-oil" })]
    public void Search_OneProperty_FindsThoseInRange(PropertyGroup group, string range, string[] ids) => Sample.InRange(group, range).ShouldBe(ids);

    [Fact]
    public void Search_Melting_TakesDropPointsOfWaxes() => Sample.InRange(PropertyGroup.Melting, "61..68.5").ShouldBe(["beeswax", "candelilla-wax", "sal-butter"]);

    [Fact]
    public void Search_Viscosity_LooksAtTheTemperatureNearestToRoomAndSaysIt()
    {
        Sample.InRange(PropertyGroup.Viscosity, "..300").ShouldBe(["jojoba-oil"], "castor oil has 220..250 at 40 °C, but 900..1000 at 20 °C");
        var figure = Figures(PropertyGroup.Viscosity, "..300").ShouldHaveSingleItem();
        figure.ShouldBe(new MatchedFigure { Group = PropertyGroup.Viscosity, Property = Property.Viscosity, Low = 30, High = 40, Unit = "mPa.s", Temperature = 40 });
    }

    [Fact]
    public void Search_Density_TurnsARelativeOneIntoDensityWhereItsWaterIsKnown()
    {
        // Water has 0.9982 g/mL at 20 °C: 0.860 * 0.9982 = 0.8585 and 0.870 * 0.9982 = 0.8684, to the four decimals that are kept.
        Sample.InRange(PropertyGroup.Density, "0.8684..0.8684").ShouldBe(["jojoba-oil"]);
        Sample.InRange(PropertyGroup.Density, "0.8685..0.9").ShouldBeEmpty();
        var figure = Figures(PropertyGroup.Density, "..0.9").ShouldHaveSingleItem();
        figure.ShouldBe(new MatchedFigure { Group = PropertyGroup.Density, Property = Property.RelativeDensity, Low = 0.8585m, High = 0.8684m, Unit = "g/mL", Temperature = 20 });
    }

    [Fact]
    public void Search_RelativeDensityAgainstUnknownWater_NeverMatches() => Sample.InRange(PropertyGroup.Density, "0..10").ShouldBe(["castor-oil", "jojoba-oil"]);

    [Fact]
    public void Search_Comedogenic_OverlapsWithAnyStudyAndLiesWithinAllOnly()
    {
        Sample.InRange(PropertyGroup.Comedogenic, "..2").ShouldBe(["coconut-oil", "shea-butter"], "one study of coconut oil says 1 to 2");
        Sample.InRange(PropertyGroup.Comedogenic, "..2", RangeMatch.Within).ShouldBe(["shea-butter"], "the other says 4");
    }

    [Fact]
    public void Search_TwoRanges_BothMustHoldAndBothAreShown()
    {
        var page = Sample.Index.Search(new SearchRequest
        {
            Properties = new Dictionary<PropertyGroup, DecimalRange>
            {
                [PropertyGroup.Melting] = Sample.Range("..36"),
                [PropertyGroup.Iodine] = Sample.Range("60.."),
            },
        });

        page.Ids().ShouldBe(["mango-butter", "shea-butter"]);
        page.Hits[0].Matched.Figures.Select(f => (f.Group, f.Low, f.High, f.Unit)).ShouldBe(
            [(PropertyGroup.Melting, 34m, 38m, "Cel"), (PropertyGroup.Iodine, 40m, 60m, "g/(100.g)")]);
    }

    [Fact]
    public void Search_TextAndRange_BothMustHold() =>
        Sample.Index.Search(new SearchRequest { Text = "butter", Properties = new Dictionary<PropertyGroup, DecimalRange> { [PropertyGroup.Iodine] = Sample.Range("..42") } })
            .Ids().ShouldBe(["cocoa-butter", "mango-butter"], "equally good and equally long names stand by id");

    [Fact]
    public void Search_EachRange_AgreesWithComparingEveryStoredFigure()
    {
        // The definition of the two matches, written out over the records: closed ends, a missing end of a statement filled by its typical value.
        foreach (var (low, high) in new (decimal, decimal)[] { (30, 36), (32, 45), (61, 66), (0, 1000), (49.3m, 49.3m) })
        {
            var figures = Sample.Release.Content.Ingredients
                .Select(i => (i.Id, Figures: i.Properties.Where(p => p.Property == Property.DropPoint || p.Property == Property.MeltingPoint).ToArray()))
                .Where(i => i.Id is "beeswax" or "candelilla-wax" or "cetyl-alcohol").ToArray();
            var expected = figures.Where(i => i.Figures.All(f => f.Least() >= low && f.Greatest() <= high)).Select(i => i.Id);

            Sample.InRange(PropertyGroup.Melting, $"{low}..{high}", RangeMatch.Within).Intersect(figures.Select(f => f.Id)).ShouldBe(expected);
        }
    }

    private static IReadOnlyList<MatchedFigure> Figures(PropertyGroup group, string range) =>
        Sample.Index.Search(new SearchRequest { Properties = new Dictionary<PropertyGroup, DecimalRange> { [group] = Sample.Range(range) } }).Hits[0].Matched.Figures;
}
