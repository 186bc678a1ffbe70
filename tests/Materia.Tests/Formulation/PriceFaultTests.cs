using Materia.Formulation.Costs;
using static Materia.Tests.Formulation.Formulas;
using static Materia.Tests.Formulation.ProductCostTests;

namespace Materia.Tests.Formulation;

public sealed class PriceFaultTests
{
    private static readonly FormulaPrice Good = Price("olive-oil", 8, "EUR", 1, "kg");

    public static TheoryData<FormulaPrice, string, string> Wrong => new()
    {
        { Good with { Ingredient = null }, "/prices/0/ingredient", "Say what this is the price of" },
        { Good with { Own = "Mine" }, "/prices/0/own", "not both" },
        { Good with { Ingredient = "nonsense" }, "/prices/0/ingredient", "not an ingredient" },
        { Good with { Ingredient = null, Own = "Mine" }, "/prices/0/own", "no material of its own" },
        { Good with { Price = null }, "/prices/0/price", "costs" },
        { Good with { Price = -1 }, "/prices/0/price", "from 0" },
        { Good with { Price = 1e11m }, "/prices/0/price", "from 0" },
        { Good with { Currency = null }, "/prices/0/currency", "ISO 4217" },
        { Good with { Currency = "eur" }, "/prices/0/currency", "\"EUR\"" },
        { Good with { Currency = "€" }, "/prices/0/currency", "\"EUR\"" },
        { Good with { Currency = "XAU" }, "/prices/0/currency", "three capitals" },
        { Good with { Per = null }, "/prices/0/per", "how much" },
        { Good with { Per = new() { Unit = "g" } }, "/prices/0/per/mass", "mass or the volume" },
        { Good with { Per = new() { Mass = 1, Volume = 1, Unit = "g" } }, "/prices/0/per/volume", "not both" },
        { Good with { Per = new() { Mass = 1 } }, "/prices/0/per/unit", "g, kg" },
        { Good with { Per = new() { Mass = 1, Unit = "mL" } }, "/prices/0/per/unit", "in place of \"mass\"" },
        { Good with { Per = new() { Volume = 1, Unit = "kg" } }, "/prices/0/per/unit", "in place of \"volume\"" },
        { Good with { Per = new() { Volume = 1, Unit = "fl oz" } }, "/prices/0/per/unit", "[foz_us]" },
        { Good with { Per = new() { Mass = 0, Unit = "g" } }, "/prices/0/per/mass", "over 0" },
        { Good with { Per = new() { Mass = 1e20m, Unit = "g" } }, "/prices/0/per/mass", "Nobody sells" },
    };

    [Theory]
    [MemberData(nameof(Wrong), DisableDiscoveryEnumeration = true)]
    public void Create_WrongPrice_IsRefusedAtItsMember(FormulaPrice price, string place, string expected) =>
        Fault(Of(Percent("olive-oil", 100)) with { Prices = [price] }, place).Message.ShouldContain(expected);

    [Fact]
    public void Create_MixedCurrencies_SaysWhatToDo() =>
        Fault(Of(Percent("olive-oil", 100)) with { Prices = [Good, Price("shea-butter", 5, "USD", 1, "kg")] }, "/prices/1/currency").Message
            .ShouldBe("This is in USD, and /prices/0 is in EUR. No exchange rates are kept here: convert all prices to one currency at the rate that you paid, and send that.");

    [Fact]
    public void Create_SamePriceTwice_IsAFault() =>
        Fault(Of(Percent("olive-oil", 100)) with { Prices = [Good, Good with { Price = 9 }] }, "/prices/1/ingredient").Message.ShouldContain("/prices/0/ingredient");

    [Fact]
    public void Create_PackagingWithoutName_IsAFault() =>
        Fault(Of(Percent("olive-oil", 100)) with { Packaging = [new() { Price = 1, Currency = "EUR" }] }, "/packaging/0/name").Message.ShouldContain("Say what it is");

    [Fact]
    public void Create_PackagingOfNoPieces_IsAFault() =>
        Fault(Of(Percent("olive-oil", 100)) with { Packaging = [new() { Name = "jar", Price = 1, Currency = "EUR", Pieces = 0 }] }, "/packaging/0/pieces").Message.ShouldContain("from 1");

    [Fact]
    public void Create_TooManyPrices_IsAFault() =>
        Fault(Of(Percent("olive-oil", 100)) with { Prices = [.. Enumerable.Repeat(Good, 201)] }, "/prices").Message.ShouldContain("at most 200");
}
