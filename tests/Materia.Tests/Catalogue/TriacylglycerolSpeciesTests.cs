using Materia.Catalogue;

namespace Materia.Tests.Catalogue;

public sealed class TriacylglycerolSpeciesTests
{
    [Theory]
    [InlineData("SOS", "SOS")]
    [InlineData("POS", "POS")]
    [InlineData("SOP", "POS")]
    [InlineData("LaMP", "LaMP")]
    [InlineData("PMLa", "LaMP")]
    [InlineData("LnLnLn", "LnLnLn")]
    [InlineData("LLnL", "LLnL")]
    [InlineData("PoOS", "PoOS")]
    [InlineData("CyCLa", "CyCLa")]
    public void Parse_OneName_IsSpeltFromOneEnd(string name, string species) => TriacylglycerolSpecies.Parse(name).ShouldBe([species]);

    [Fact]
    public void Parse_TwoJoined_AreTwo() => TriacylglycerolSpecies.Parse("SLO+OOO").ShouldBe(["OLS", "OOO"]);

    [Fact]
    public void Parse_EveryLetter_IsReadBackFromItsOwnName()
    {
        foreach (var letter in TriacylglycerolSpecies.Letters)
        {
            TriacylglycerolSpecies.Parse($"{letter}{letter}{letter}").ShouldBe([$"{letter}{letter}{letter}"]);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("SO")]
    [InlineData("SOSO")]
    [InlineData("SXS")]
    [InlineData("sOS")]
    [InlineData("S O S")]
    [InlineData("SOS+")]
    [InlineData("C52")]
    [InlineData("S-Ep-S")]
    public void Parse_NoSpecies_IsNull(string name) => TriacylglycerolSpecies.Parse(name).ShouldBeNull();
}
