using Materia.Formulation;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class FormulaFaultTests
{
    [Fact]
    public void Create_NoLines_IsAFault() => Fault(new Formula(), "/lines").Message.ShouldContain("at least one line");

    [Fact]
    public void Create_TooManyLines_IsOneFaultThatSaysTheLimit()
    {
        var lines = Enumerable.Repeat(new FormulaLine { Ingredient = "nonsense" }, 10_000).ToList();

        Fault(Of(lines), "/lines").Message.ShouldContain("at most 200 lines, and this one has 10000");
    }

    [Fact]
    public void Create_MostLinesAllowed_IsNoFault() =>
        Normalised(Of([.. Enumerable.Repeat(Percent("kaolin", 0.5m), 200)])).Lines.Count.ShouldBe(200);

    [Fact]
    public void Create_UnknownIngredient_NamesItForSuggestions()
    {
        var fault = Fault(Of(Percent("shae-buter", 100)), "/lines/0/ingredient");

        fault.UnknownIngredient.ShouldBe("shae-buter");
        fault.Message.ShouldContain("\"own\"");
    }

    [Fact]
    public void Create_NeitherIngredientNorOwn_IsAFault() =>
        Fault(Of(new FormulaLine { Percent = 100 }), "/lines/0/ingredient").Message.ShouldContain("Name the material");

    [Fact]
    public void Create_IngredientAndOwn_IsAFault() =>
        Fault(Of(Percent("kaolin", 100) with { Own = new() { Name = "My kaolin" } }), "/lines/0/own").Message.ShouldContain("not both");

    [Fact]
    public void Create_UnknownUse_ListsTheUses() =>
        Fault(Of(Percent("kaolin", 100)) with { Use = "soap" }, "/use").Message.ShouldContain("\"hair-mask-rinse-off\", \"body-butter-leave-on\"");

    [Theory]
    [InlineData(-1)]
    [InlineData(301)]
    public void Create_OverrunOutOfRange_IsAFault(int overrun) =>
        Fault(Of(Percent("kaolin", 100)) with { Whip = new() { OverrunPercent = overrun } }, "/whip/overrunPercent").Message.ShouldContain("from 0 to 300");

    [Fact]
    public void Create_WhipWithoutOverrun_IsAFault() =>
        Fault(Of(Percent("kaolin", 100)) with { Whip = new() }, "/whip/overrunPercent").Message.ShouldContain("Give the overrun");

    [Fact]
    public void Create_LongTexts_AreFaults()
    {
        var text = new string('x', 201);
        var formula = Of(Percent("kaolin", 100) with { Name = text }) with { Title = text };

        Faults(formula).Select(f => f.Pointer).ShouldBe(["/title", "/lines/0/name"]);
    }

    [Fact]
    public void Create_ManyFaults_NamesAllOfThem()
    {
        var formula = new Formula
        {
            Use = "soap",
            Lines = [Percent("nonsense", 10), Percent("kaolin", -1), Mass("beeswax", 5, "ml")],
            Batch = new() { Mass = 0, Unit = "g", LossPercent = 95 },
            Whip = new() { OverrunPercent = 999 },
        };

        Faults(formula).Select(f => f.Pointer).ShouldBe(
            ["/use", "/whip/overrunPercent", "/lines/0/ingredient", "/lines/1/percent", "/lines/2/unit", "/lines/2/mass", "/batch/mass", "/batch/lossPercent"],
            ignoreOrder: true);
    }

    [Fact]
    public void Create_HundredsOfFaults_StopsAtFifty() =>
        Faults(Of([.. Enumerable.Repeat(new FormulaLine(), 200)])).Count.ShouldBe(50);

    [Fact]
    public void Create_LongUnknownIngredient_IsShortenedInTheMessage() =>
        Fault(Of(Percent(new string('y', 100_000), 100)), "/lines/0/ingredient").Message.Length.ShouldBeLessThan(300);
}
