using Materia.Chemistry.Preserving;
using Materia.Formulation;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class MeasuredPhTests
{
    [Fact]
    public void Create_Value_CountsWithTheErrorOfAStrip() =>
        Normalised(With(new() { Value = 5 })).Ph.ShouldBe(new PhRange(4.8m, 5m, 5.2m));

    [Fact]
    public void Create_Range_KeepsItsEnds() => Normalised(With(new() { Low = 4.4m, High = 4.8m })).Ph.ShouldBe(new PhRange(4.4m, 4.6m, 4.8m));

    [Fact]
    public void Create_NoPh_HasNone() => Normalised(Of(Percent("olive-oil", 100))).Ph.ShouldBeNull();

    public static TheoryData<double?, double?, double?, string> Wrong => new()
    {
        { null, null, null, "/ph/value" },
        { 5, 4, null, "/ph/value" },
        { null, 4, null, "/ph/high" },
        { null, null, 6, "/ph/low" },
        { -0.1, null, null, "/ph/value" },
        { 14.1, null, null, "/ph/value" },
        { null, 6, 5, "/ph/low" },
        { null, 6, 15, "/ph/high" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Create_WrongPh_IsRefusedAtItsMember(double? value, double? low, double? high, string at) =>
        Fault(With(new() { Value = (decimal?)value, Low = (decimal?)low, High = (decimal?)high }), at).Message.Length.ShouldBeGreaterThan(20);

    private static Formula With(MeasuredPh ph) => Of(Percent("olive-oil", 100)) with { Ph = ph };
}
