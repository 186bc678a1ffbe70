using Materia.Formulation;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation.Making;

public sealed class MakingFaultTests
{
    [Theory]
    [InlineData(-5)]
    [InlineData(0)]
    [InlineData(20_001)]
    public void Create_PowerOutOfRange_IsAFault(int watts) =>
        FaultOf(new() { HeaterPower = new() { Value = watts, Unit = "W" } }, "heaterPower/value").ShouldContain("over 0 and up to 20000 W");

    [Fact]
    public void Create_PowerWithoutAValue_IsAFault() => FaultOf(new() { HeaterPower = new() { Unit = "W" } }, "heaterPower/value").ShouldContain("Give the power");

    [Theory]
    [InlineData("BTU/h")]
    [InlineData("w")]
    public void Create_UnknownUnitOfPower_IsAFault(string unit) =>
        FaultOf(new() { HeaterPower = new() { Value = 500, Unit = unit } }, "heaterPower/unit").ShouldContain("\"W\" or \"kW\"");

    [Fact]
    public void Create_PowerWithoutAUnit_IsAFault() => FaultOf(new() { HeaterPower = new() { Value = 500 } }, "heaterPower/unit").ShouldContain("Give the unit");

    [Fact]
    public void Create_UnknownVessel_IsAFault() => FaultOf(new() { Vessel = "bathtub" }, "vessel").ShouldContain("steel-bowl");

    [Theory]
    [InlineData(4)]
    [InlineData(41)]
    public void Create_RoomOutOfRange_IsAFault(int room) => FaultOf(new() { Room = room }, "room").ShouldContain("from 5 to 40");

    [Theory]
    [InlineData(-31)]
    [InlineData(21)]
    public void Create_ChillOutOfRange_IsAFault(int chill) => FaultOf(new() { Room = 30, Chill = chill }, "chill").ShouldContain("from -30 to 20");

    [Theory]
    [InlineData(10, 15)]
    [InlineData(12, 12)]
    public void Create_RoomNoWarmerThanTheFridge_IsAFault(int room, int chill) => FaultOf(new() { Room = room, Chill = chill }, "room").ShouldContain("no warmer");

    [Fact]
    public void Create_NothingSaid_TakesWhatIsUsual()
    {
        var making = Normalised(Of(Percent("kaolin", 100))).Making;

        (making.Power, making.Room, making.Chill, making.Vessel.Id).ShouldBe((null, 20, 5, "steel-bowl"));
        making.Assumed.Count.ShouldBe(2);
    }

    private static string FaultOf(FormulaMaking making, string member) =>
        Fault(Of(Percent("kaolin", 100)) with { Making = making }, $"/making/{member}").Message;
}
