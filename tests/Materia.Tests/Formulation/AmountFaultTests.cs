using Materia.Formulation;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class AmountFaultTests
{
    private static readonly FormulaLine Half = Percent("olive-oil", 50);

    [Fact]
    public void Create_NoAmount_IsAFault() =>
        Fault(Of(Half, new FormulaLine { Ingredient = "kaolin" }), "/lines/1/percent").Message.ShouldContain("no amount");

    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    public void Create_PercentNotOverNought_IsAFault(int percent) =>
        Fault(Of(Half, Percent("kaolin", percent)), "/lines/1/percent").Message.ShouldContain("over 0");

    [Fact]
    public void Create_PercentTooSmallToCount_IsAFault() =>
        Fault(Of(Percent("kaolin", 1e-11m), Balance("olive-oil")), "/lines/0/percent").Message.ShouldContain("too small");

    [Fact]
    public void Create_PercentOverOneHundred_IsAFault() =>
        Fault(Of(Percent("kaolin", 100.5m)), "/lines/0/percent").Message.ShouldContain("at most 100");

    [Fact]
    public void Create_HugePercents_AreFaultsAndDoNotOverflow() =>
        Faults(Of(Percent("kaolin", decimal.MaxValue), Percent("olive-oil", decimal.MaxValue))).Select(f => f.Pointer).ShouldBe(["/lines/0/percent", "/lines/1/percent"]);

    [Fact]
    public void Create_HugeMasses_AreFaultsAndDoNotOverflow() =>
        Faults(Of(Mass("kaolin", decimal.MaxValue, "kg"), Mass("olive-oil", decimal.MaxValue, "lb"))).Select(f => f.Pointer).ShouldBe(["/lines/0/mass", "/lines/1/mass"]);

    [Theory]
    [InlineData(42.5, "92.5", "7.5 points are missing")]
    [InlineData(42.5, "92.5", "\"balance\": true")]
    [InlineData(60, "110", "10 points too many")]
    [InlineData(49.98, "99.98", "0.02 points are missing")]
    public void Create_SumNotOneHundred_SaysTheSumAndTheDifference(double percent, string sum, string expected)
    {
        var message = Fault(Of(Half, Percent("kaolin", (decimal)percent)), "/lines").Message;

        message.ShouldContain($"add up to {sum};");
        message.ShouldContain(expected);
    }

    [Theory]
    [InlineData(60, "110 %")]
    [InlineData(50, "100 %")]
    public void Create_NothingLeftForTheBalance_IsAFaultAtTheBalance(int percent, string expected) =>
        Fault(Of(Half, Balance("beeswax"), Percent("kaolin", percent)), "/lines/1/balance").Message.ShouldContain(expected);

    [Fact]
    public void Create_TwoBalances_IsAFaultAtTheSecond() =>
        Fault(Of(Half, Balance("beeswax"), Balance("kaolin")), "/lines/2/balance").Message.ShouldContain("/lines/1");

    [Fact]
    public void Create_BalanceWithAnAmount_IsAFault() =>
        Fault(Of(Half, Percent("kaolin", 50) with { Balance = true }), "/lines/1/percent").Message.ShouldContain("no amount of its own");

    [Fact]
    public void Create_PercentAndMassOnOneLine_IsAFault() =>
        Fault(Of(Half, Mass("kaolin", 50) with { Percent = 50 }), "/lines/1/mass").Message.ShouldContain("not both");

    [Fact]
    public void Create_MassAfterPercent_IsAFault() =>
        Fault(Of(Half, Mass("kaolin", 50)), "/lines/1/mass").Message.ShouldContain("/lines/0 gives a percentage");

    [Fact]
    public void Create_PercentAfterMass_IsAFault() =>
        Fault(Of(Mass("kaolin", 50), Half), "/lines/1/percent").Message.ShouldContain("/lines/0 gives a mass");

    [Fact]
    public void Create_BalanceAmongMasses_IsAFault() =>
        Fault(Of(Mass("kaolin", 50), Balance("olive-oil")), "/lines/1/balance").Message.ShouldContain("Give this line its mass");

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void Create_MassNotOverNought_IsAFault(int mass) =>
        Fault(Of(Mass("kaolin", mass)), "/lines/0/mass").Message.ShouldContain("over 0");

    [Fact]
    public void Create_MassWithoutUnit_IsAFault() =>
        Fault(Of(new FormulaLine { Ingredient = "kaolin", Mass = 5 }), "/lines/0/unit").Message.ShouldContain("g, kg, mg, oz or lb");

    [Theory]
    [InlineData("ml", "measures volume")]
    [InlineData("TSP", "measures volume")]
    [InlineData("G", "not a unit of mass")]
    [InlineData("stone", "not a unit of mass")]
    public void Create_UnitNotOfMass_IsAFault(string unit, string expected) =>
        Fault(Of(Mass("kaolin", 5, unit)), "/lines/0/unit").Message.ShouldContain(expected);

    [Fact]
    public void Create_UnitBesidePercent_IsAFault() =>
        Fault(Of(Percent("kaolin", 100) with { Unit = "g" }), "/lines/0/unit").Message.ShouldContain("beside a mass only");

    [Fact]
    public void Create_MassTooSmallToCount_IsAFault() =>
        Fault(Of(Mass("kaolin", 0.0001m, "mg"), Mass("olive-oil", 1000, "kg")), "/lines/0/mass").Message.ShouldContain("too small");
}
