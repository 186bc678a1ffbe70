using Materia.Formulation;
using Materia.Formulation.Costs;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

/// <summary>Costs, each worked by hand.</summary>
public sealed class ProductCostTests
{
    private static readonly FormulaPrice Olive = Price("olive-oil", 8, "EUR", 1, "kg");
    private static readonly FormulaPrice Shea = Price("shea-butter", 12.50m, "EUR", 500, "g");

    private static Formula Balm => Of(Percent("olive-oil", 60), Percent("shea-butter", 40));

    // 60 g at 8 EUR/kg are 0.48, 40 g at 25 EUR/kg are 1.00: together 1.48, of which the oil is 32.43 %. 250 g: 1.20 + 2.50 = 3.70.
    [Fact]
    public void Evaluate_Prices_GivesBatchHundredGramsAndShares()
    {
        var cost = Cost(Balm with { Prices = [Olive, Shea], Batch = new() { Mass = 250, Unit = "g" } });

        cost.PerHundredGrams.ShouldBe(new Money(1.48m, "EUR"));
        cost.Batch.ShouldBe(new Money(3.70m, "EUR"));
        cost.Lines.Select(l => (l.PerKilogram.Value, l.InHundredGrams.Value, l.InBatch!.Value, l.SharePercent)).ShouldBe(
            [(8.00m, 0.48m, 1.20m, 32.43m), (25.00m, 1.00m, 2.50m, 67.57m)]);
        (cost.Coverage, cost.Complete, cost.PerHundredGramsFilled).ShouldBe((1m, true, null));
        cost.Warnings.ShouldBeEmpty();
    }

    // A fifth is lost: 200 g are left, 3.70/2 = 1.85 for 100 g. A jar of 50 g: 3.70 × 50/200 = 0.925, half to even 0.92. Packaging 0.85 + 5/20 = 1.10;
    // 0.925 + 1.10 = 2.025, half to even 2.02. Four jars fill: 3.70 + 4.40 = 8.10.
    [Fact]
    public void Evaluate_JarsAndPackaging_CountLossAndRoundHalvesToEven()
    {
        var cost = Cost(Balm with
        {
            Prices = [Olive, Shea],
            Packaging = [new() { Name = "jar with lid", Price = 0.85m, Currency = "EUR" }, new() { Name = "label", Price = 5, Currency = "EUR", Pieces = 20 }],
            Batch = new() { Mass = 250, Unit = "g", LossPercent = 20, JarMass = 50 },
        });

        cost.PerHundredGramsFilled.ShouldBe(new Money(1.85m, "EUR"));
        cost.Jar.ShouldBe(new JarCost(50, new(0.92m, "EUR"), new(1.10m, "EUR"), new(2.02m, "EUR")));
        cost.BatchWithPackaging.ShouldBe(new Money(8.10m, "EUR"));
    }

    [Fact]
    public void Evaluate_LineWithoutPrice_IsSaidAndNotGuessed()
    {
        var cost = Cost(Balm with { Prices = [Olive] });

        (cost.Coverage, cost.Complete).ShouldBe((0.6m, false));
        cost.PerHundredGrams.ShouldBe(new Money(0.48m, "EUR"));
        var missing = cost.WithoutPrice.ShouldHaveSingleItem();
        (missing.Ingredient, missing.Percent).ShouldBe(("shea-butter", 40m));
        cost.Warnings.ShouldHaveSingleItem().ShouldStartWith("40 % of the mass has no price");
    }

    // 100 mL of squalane weigh 81 g at 0.81 g/mL; 8.10 EUR for them are 0.10 EUR/g.
    [Fact]
    public void Evaluate_PricePerVolume_GoesByTheDensity()
    {
        var cost = Cost(Of(Percent("squalane", 100)) with { Prices = [new() { Ingredient = "squalane", Price = 8.10m, Currency = "EUR", Per = new() { Volume = 100, Unit = "mL" } }] });

        var line = cost.Lines.ShouldHaveSingleItem();
        (line.PerKilogram.Value, line.Approximate).ShouldBe((100.00m, true));
    }

    [Fact]
    public void Evaluate_PowderPerVolume_IsNotCounted() =>
        Cost(Of(Percent("kaolin", 100)) with { Prices = [new() { Ingredient = "kaolin", Price = 3, Currency = "EUR", Per = new() { Volume = 100, Unit = "mL" } }] })
            .WithoutPrice.ShouldHaveSingleItem().Reason.ShouldContain("Give the price per mass");

    // 1000/28.349523125 = 35.27396...
    [Fact]
    public void Evaluate_PricePerOunce_TakesTheAvoirdupoisOunce() =>
        Cost(Of(Percent("olive-oil", 100)) with { Prices = [Price("olive-oil", 1, "USD", 1, "oz")] }).Lines[0].PerKilogram.ShouldBe(new Money(35.27m, "USD"));

    // 100 g at 985 a kilogram are 98.5: whole yen, half to even 98; dinars of a thousand fils keep 98.500. The minor units are those of ISO 4217.
    [Theory]
    [InlineData("JPY", "98")]
    [InlineData("EUR", "98.50")]
    [InlineData("KWD", "98.500")]
    public void Evaluate_Currency_RoundsToItsMinorUnit(string currency, string expected) =>
        Cost(Of(Percent("olive-oil", 100)) with { Prices = [Price("olive-oil", 985.000m, currency, 1, "kg")] })
            .PerHundredGrams!.Value.ShouldBe(decimal.Parse(expected, System.Globalization.CultureInfo.InvariantCulture));

    [Fact]
    public void Evaluate_FreeOfCharge_HasNoShares() => Cost(Balm with { Prices = [Olive with { Price = 0 }, Shea with { Price = 0 }] }).Lines[0].SharePercent.ShouldBeNull();

    [Fact]
    public void Evaluate_NoPrices_SaysWhatToSend() => Cost(Balm).Absent.ShouldNotBeNull().ShouldContain("\"prices\"");

    [Fact]
    public void Evaluate_PriceOfSomethingElse_IsNoted() =>
        Cost(Balm with { Prices = [Olive, Shea, Price("kaolin", 3, "EUR", 1, "kg")] }).Notes.ShouldHaveSingleItem().ShouldContain("\"kaolin\"");

    [Fact]
    public void Evaluate_FormerIdAndOwnMaterial_FindTheirPrices()
    {
        var own = new Materia.Formulation.OwnMaterials.OwnMaterial { Name = "Lot 12", Kind = Materia.Catalogue.IngredientKind.Oil };
        var cost = Cost(Of(Own(own, 50), Percent("karite-butter", 50)) with
        {
            Prices = [new() { Own = "lot 12", Price = 10, Currency = "EUR", Per = new() { Mass = 1, Unit = "kg" } }, Price("shea-butter", 20, "EUR", 1, "kg")],
        });

        // 50 g at 10 and 50 g at 20 EUR/kg.
        (cost.Complete, cost.PerHundredGrams!.Value).ShouldBe((true, 1.50m));
    }

    internal static FormulaPrice Price(string ingredient, decimal price, string currency, decimal mass, string unit) =>
        new() { Ingredient = ingredient, Price = price, Currency = currency, Per = new() { Mass = mass, Unit = unit } };

    private static ProductCost Cost(Formula formula) =>
        Evaluator.Evaluate(Normalised(formula), TestCatalogue.Release, new() { Sections = [ProductCost.Section], Explain = true }).Of(ProductCost.Section)!;
}
