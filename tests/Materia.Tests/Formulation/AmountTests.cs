using CsCheck;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class AmountTests
{
    private static readonly string[] Ids = [.. TestCatalogue.Release.Content.Ingredients.Select(i => i.Id)];

    private static readonly Gen<decimal> Masses = Gen.Int[1, 1_000_000].Select(Gen.Int[0, 3], (n, places) => new decimal(n, 0, 0, false, (byte)places));

    [Fact]
    public void Create_AnyMasses_PercentagesAddUpToExactlyOneHundred() =>
        Gen.Select(Masses.List[1, 12], Gen.OneOf("g", "kg", "mg", "oz", "lb")).Sample((masses, unit) =>
            Percents(Of([.. masses.Select((m, i) => Mass(Ids[i % Ids.Length], m, unit))])).Sum() == 100m);

    [Fact]
    public void Create_MassesTimesAFactor_GivesTheSamePercentages() =>
        Gen.Select(Masses.List[2, 8], Gen.Int[1, 1000]).Sample((masses, factor) =>
            Percents(Of([.. masses.Select((m, i) => Mass(Ids[i], m))]))
                .SequenceEqual(Percents(Of([.. masses.Select((m, i) => Mass(Ids[i], m * factor))]))));

    [Theory]
    [InlineData("28.349523125", "g")]
    [InlineData("0.028349523125", "kg")]
    [InlineData("28349.523125", "mg")]
    [InlineData("1", "oz")]
    [InlineData("1", "[oz_av]")]
    [InlineData("0.0625", "lb")]
    public void Create_OneOunceInAnyUnit_IsHalfBesideAnOunce(string mass, string unit) =>
        Percents(Of(Mass("olive-oil", decimal.Parse(mass, System.Globalization.CultureInfo.InvariantCulture), unit), Mass("kaolin", 1, "oz"))).ShouldBe([50m, 50m]);

    [Fact]
    public void Create_ThirdsByMass_GivesTheLastStepToTheFirst() =>
        Percents(Of(Mass("olive-oil", 1), Mass("kaolin", 1), Mass("beeswax", 1))).ShouldBe([33.3333333334m, 33.3333333333m, 33.3333333333m]);

    [Fact]
    public void Create_WithBalance_FillsUpToOneHundred() =>
        Percents(Of(Percent("olive-oil", 30), Balance("sunflower-oil"), Percent("kaolin", 8.25m))).ShouldBe([30m, 61.75m, 8.25m]);

    [Fact]
    public void Create_BalanceFalse_IsAnOrdinaryLine() =>
        Percents(Of(Percent("olive-oil", 30) with { Balance = false }, Percent("kaolin", 70))).ShouldBe([30m, 70m]);

    [Fact]
    public void Create_PercentagesThatAddUp_AreKeptAsWritten() =>
        Percents(Of(Percent("olive-oil", 12.3456789012345m), Percent("kaolin", 87.6543210987655m))).ShouldBe([12.3456789012345m, 87.6543210987655m]);

    [Theory]
    [InlineData(33.33, 99.99)]
    [InlineData(33.335, 100.005)]
    public void Create_SumOffByRounding_IsScaledAndNoted(double third, double sum)
    {
        var formula = Normalised(Of(Percent("olive-oil", (decimal)third), Percent("kaolin", (decimal)third), Percent("beeswax", (decimal)third)));

        formula.Lines.Sum(l => l.Percent).ShouldBe(100m);
        formula.Notes.ShouldHaveSingleItem().ShouldContain(((decimal)sum).ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Create_FormerId_IsFollowedAndNoted()
    {
        var formula = Normalised(Of(Percent("karite-butter", 100)));

        formula.Lines[0].Material.ShouldBe("shea-butter");
        formula.Notes.ShouldHaveSingleItem().ShouldContain("\"karite-butter\" is a former id; \"shea-butter\" was used.");
    }

    [Fact]
    public void Create_SameIngredientTwice_KeepsBothLinesAndBlendsThemTogether()
    {
        var formula = Normalised(Of(Percent("olive-oil", 40), Percent("kaolin", 10), Percent("olive-oil", 50)));

        formula.Lines.Count.ShouldBe(3);
        formula.Notes.ShouldHaveSingleItem().ShouldContain("\"olive-oil\" stands on 2 lines");
        formula.Blend(TestCatalogue.Release).Components.Select(c => (c.Name, c.MassFraction)).ShouldBe([("olive-oil", 0.9), ("kaolin", 0.1)]);
    }
}
