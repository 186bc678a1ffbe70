using Materia.Formulation;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class BatchFaultTests
{
    private static readonly FormulaBatch Batch = new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m };

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void Create_MassNotOverNought_IsAFault(int mass) => FaultOf(Batch with { Mass = mass }, "mass").ShouldContain("over 0");

    [Fact]
    public void Create_AbsurdMass_IsAFault() => FaultOf(Batch with { Mass = 10_001, Unit = "kg" }, "mass").ShouldContain("ten tonnes");

    [Fact]
    public void Create_HugeMass_IsAFaultAndDoesNotOverflow() => FaultOf(Batch with { Mass = decimal.MaxValue, Unit = "kg" }, "mass").ShouldContain("ten tonnes");

    [Fact]
    public void Create_MassWithoutUnit_IsAFault() => FaultOf(Batch with { Unit = null }, "unit").ShouldContain("Give the unit");

    [Fact]
    public void Create_UnitOfVolume_IsAFault() => FaultOf(Batch with { Unit = "ml" }, "unit").ShouldContain("measures volume");

    [Fact]
    public void Create_Empty_AsksHowMuch() => FaultOf(new(), "mass").ShouldContain("\"jars\" and \"jarVolume\"");

    [Theory]
    [InlineData("0", "over 0")]
    [InlineData("-0.1", "over 0")]
    [InlineData("251", "more than the whole batch")]
    [InlineData("0.00000001", "No balance shows")]
    public void Create_ScaleResolutionOutOfBounds_IsAFault(string resolution, string expected) =>
        FaultOf(Batch with { ScaleResolution = decimal.Parse(resolution, System.Globalization.CultureInfo.InvariantCulture) }, "scaleResolution").ShouldContain(expected);

    [Fact]
    public void Create_TinyBatchWithoutResolution_AsksForTheScale() =>
        FaultOf(new() { Mass = 0.05m, Unit = "g" }, "scaleResolution").ShouldContain("Give the step of your scale");

    [Theory]
    [InlineData(-1)]
    [InlineData(91)]
    public void Create_LossOutOfRange_IsAFault(int loss) => FaultOf(Batch with { LossPercent = loss }, "lossPercent").ShouldContain("from 0 to 90");

    [Fact]
    public void Create_JarsWithoutVolume_IsAFault() => FaultOf(Batch with { Jars = 3 }, "jarVolume").ShouldContain("in mL");

    [Fact]
    public void Create_NoJars_IsAFault() => FaultOf(Batch with { Jars = 0, JarVolume = 50 }, "jars").ShouldContain("from 1 to");

    [Fact]
    public void Create_HeadspaceOutOfRange_IsAFault() => FaultOf(Batch with { JarVolume = 50, HeadspacePercent = 60 }, "headspacePercent").ShouldContain("from 0 to 50");

    [Fact]
    public void Create_MassAndVolume_IsAFault() => FaultOf(Batch with { Volume = 250 }, "volume").ShouldContain("not both");

    [Fact]
    public void Create_VolumeOutOfRange_IsAFault() => FaultOf(new() { Volume = 0 }, "volume").ShouldContain("from 0.1");

    [Fact]
    public void Create_JarVolumeAndJarMass_IsAFault() => FaultOf(Batch with { JarVolume = 50, JarMass = 50 }, "jarMass").ShouldContain("not both");

    [Fact]
    public void Create_HeadspaceOfAJarByMass_IsAFault() => FaultOf(Batch with { JarMass = 50, HeadspacePercent = 5 }, "headspacePercent").ShouldContain("leave it out");

    [Theory]
    [InlineData("0", "over 0")]
    [InlineData("0.001", "No jar takes")]
    [InlineData("1000001", "No jar takes")]
    public void Create_JarMassOutOfRange_IsAFault(string mass, string expected) =>
        FaultOf(Batch with { JarMass = decimal.Parse(mass, System.Globalization.CultureInfo.InvariantCulture) }, "jarMass").ShouldContain(expected);

    private static string FaultOf(FormulaBatch batch, string member) =>
        Fault(Of(Percent("kaolin", 100)) with { Batch = batch }, $"/batch/{member}").Message;
}
