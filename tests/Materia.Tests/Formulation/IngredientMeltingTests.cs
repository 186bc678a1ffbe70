using System.Globalization;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation;

/// <summary>The melting of one ingredient: kept with its release, and held against what was measured.</summary>
public sealed class IngredientMeltingTests
{
    private static readonly Ingredient Cocoa = SeedCatalogue.Ingredient("cocoa-butter");

    private static Release Release => SeedCatalogue.Release;

    [Fact]
    public void Of_CalledTwice_IsWorkedOutOnce() => IngredientMelting.Of(Cocoa, Release).ShouldBeSameAs(IngredientMelting.Of(Cocoa, Release));

    [Fact]
    public void Of_OtherReleaseOfTheSameContent_IsWorkedOutForIt()
    {
        var other = new Release(2, DateTimeOffset.UnixEpoch, "other", Release.Content);

        IngredientMelting.Of(Cocoa, other).ShouldNotBeSameAs(IngredientMelting.Of(Cocoa, Release));
    }

    [Fact]
    public void Of_MaterialThatTheReleaseLacks_TakesItsOwnComposition()
    {
        var namesake = TestFat.Of(Cocoa.Id, IngredientKind.Oil, ("18:1n-9", 100));

        // Triolein melts near 5 Cel in its highest form, cocoa butter above 30.
        IngredientMelting.Of(namesake, Release).SolidContent.Single(p => p.Temperature == 20).Percent.ShouldBe(0);
        IngredientMelting.Of(Cocoa, Release).SolidContent.Single(p => p.Temperature == 20).Percent.ShouldBeGreaterThan(50);
    }

    [Fact]
    public void Of_MeasuredFiguresInsideTheBand_SaysNothingOfThem()
    {
        var computed = Melting();

        Disagreements(
            TestFat.Figure(Property.MeltingRange, null, 20, (decimal)computed.ClearPoint!.Value!),
            TestFat.Figure(Property.SlipMeltingPoint, null, 10, (decimal)computed.SlipPoint!.Value!)).ShouldBeEmpty();
    }

    [Theory]
    [InlineData(5)]
    [InlineData(-5)]
    public void Of_TopOfTheMeasuredRangeOutsideTheBand_NamesBothNumbers(double off)
    {
        var clear = Melting().ClearPoint!;
        var top = Math.Round((decimal)((off > 0 ? clear.High : clear.Low) + off)!.Value, 1);

        var warning = Disagreements(TestFat.Figure(Property.MeltingRange, null, 10, top)).ShouldHaveSingleItem();

        warning.ShouldContain(string.Create(CultureInfo.InvariantCulture, $"melting range ends at {top:0.##} Cel"));
        warning.ShouldContain(string.Create(CultureInfo.InvariantCulture, $"clear point is {clear.Value:0.0} Cel, {clear.Low:0.0} to {clear.High:0.0}"));
    }

    [Fact]
    public void Of_MeasuredSlipPointAboveTheBand_NamesBothNumbers()
    {
        var slip = Melting().SlipPoint!;
        var low = Math.Round((decimal)slip.High!.Value + 3, 1);

        Disagreements(TestFat.Figure(Property.SlipMeltingPoint, null, low, low + 2)).ShouldHaveSingleItem()
            .ShouldContain(string.Create(CultureInfo.InvariantCulture, $"slip melting point is {low:0.##} to {low + 2:0.##} Cel (test); the computed slip point is {slip.Value:0.0} Cel"));
    }

    [Fact]
    public void Of_MeasuredRangeOpenAbove_SaysNothingOfItsTop() => Disagreements(TestFat.Figure(Property.MeltingRange, null, 90)).ShouldBeEmpty();

    [Fact]
    public void Of_SeveralMeasuredRanges_TakesTheUsedOne() => Disagreements(
        TestFat.Figure(Property.MeltingRange, null, 60, 70),
        TestFat.Figure(Property.MeltingRange, null, 10, (decimal)Melting().ClearPoint!.Value!) with { Used = true }).ShouldBeEmpty();

    private static BlendMelting Melting(params Figure[] figures) => IngredientMelting.Of(Cocoa with { Properties = figures }, Release);

    private static IEnumerable<string> Disagreements(params Figure[] figures) =>
        Melting(figures).Warnings.Where(w => w.StartsWith("The catalogue's", StringComparison.Ordinal));
}
