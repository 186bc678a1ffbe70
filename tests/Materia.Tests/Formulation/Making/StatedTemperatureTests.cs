using Materia.Formulation.Making;

namespace Materia.Tests.Formulation.Making;

public sealed class StatedTemperatureTests
{
    // Notes as the catalogue writes them.
    [Theory]
    [InlineData("Stir it in below 45 °C; flash point in the upper eighties.", 45)]
    [InlineData("Stir it in below about 50 °C, when the emulsion stands.", 50)]
    [InlineData("Never above 40 °C; put it in the last stir.", 40)]
    [InlineData("Let the batch fall to 40 °C first.", 40)]
    [InlineData("Blend into the oils; it flashes near 57 °C.", null)]
    [InlineData("Melt with the oils at 75 °C; below 70 °C some of it stays undissolved.", 70)]
    [InlineData("below 4", null)]
    public void Below_Note_GivesItsTemperature(string note, int? expected) => StatedTemperature.Below(note).ShouldBe(expected);

    [Theory]
    [InlineData("65 °C with the oils; below that, flakes hide in the melt.", 65)]
    [InlineData("Melt it at 60 to 70 °C until wholly clear.", 60)]
    [InlineData("Melt with the oils at 75 °C; below 70 °C some of it stays undissolved.", 75)]
    [InlineData("Melt at no more than 60 °C, and whip at about 20 °C.", null)]
    [InlineData("Heat 40 °C", null)]
    public void Melting_Note_GivesItsTemperature(string note, int? expected) => StatedTemperature.Melting(note).ShouldBe(expected);

    [Fact]
    public void NoMoreThan_Note_GivesItsTemperature() => StatedTemperature.NoMoreThan("Melt at no more than 60 °C, and whip at about 20 °C.").ShouldBe(60);
}
