using Materia.Catalogue;
using Materia.Formulation.OwnMaterials;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class OwnFigureTests
{
    [Fact]
    public void Create_WithoutUnit_SaysTheUnit() =>
        FaultOf(new() { Value = 0.9m }, "/unit").ShouldContain("\"g/mL\"");

    [Fact]
    public void Create_OtherUnit_SaysToConvert() =>
        FaultOf(new() { Value = 900, Unit = "kg/m3" }, "/unit").ShouldContain("convert the figure from \"kg/m3\"");

    [Fact]
    public void Create_Implausible_SaysTheBand() =>
        FaultOf(new() { Value = 900, Unit = "g/mL" }, "").ShouldContain("from 0.6 to 7, and 900 is not");

    [Fact]
    public void Create_NoNumber_AsksForOne() =>
        FaultOf(new() { Unit = "g/mL" }, "/value").ShouldContain("Give a value");

    [Fact]
    public void Create_ValueAndTypical_IsAFault() =>
        FaultOf(new() { Value = 0.9m, Typical = 0.9m, Unit = "g/mL" }, "/value").ShouldContain("mean the same");

    [Fact]
    public void Create_ReversedRange_IsAFault() =>
        FaultOf(new() { Low = 0.95m, High = 0.9m, Unit = "g/mL" }, "").ShouldContain("must rise");

    [Fact]
    public void Create_ImpossibleTemperature_IsAFault() =>
        FaultOf(new() { Value = 0.9m, Unit = "g/mL", At = new() { Temperature = 1e27m } }, "/at/temperature").ShouldContain("from -100 to 400");

    private static string FaultOf(OwnFigure figure, string member)
    {
        var own = new OwnMaterial { Name = "Oil", Kind = IngredientKind.Oil, Figures = new() { [Property.Density] = figure } };
        return Fault(Of(Own(own)), $"/lines/0/own/density{member}").Message;
    }
}
