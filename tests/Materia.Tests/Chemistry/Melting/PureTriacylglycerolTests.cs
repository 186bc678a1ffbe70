using Materia.Chemistry.Melting;
using static Materia.Tests.Chemistry.Melting.MeltingFats;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>The correlation of melting points and enthalpies against printed and recalled values of pure fats.</summary>
public sealed class PureTriacylglycerolTests
{
    [Fact]
    public void MeltingPoint_TripalmitinBeta_IsTheWorkedValue()
    {
        // Worked values of the correlation, seen in a public transcription (secondary): exact to the digits given.
        var ppp = TriacylglycerolName.Parse("PPP")!.Value;
        WesdorpCorrelation.MeltingPoint(ppp, Polymorph.Beta).ShouldBe(64.48, 0.005);
        WesdorpCorrelation.EnthalpyOfFusion(ppp, Polymorph.Beta).ShouldBe(168.02, 0.005);
    }

    [Theory]
    [InlineData("OOO", 6.3, 100.8)]
    [InlineData("SOS", 44.9, 161.2)]
    public void MeltingPoint_Beta_IsTheNotesValue(string name, double celsius, double enthalpy)
    {
        // Values of the project's science note for the same coefficients: exact to the digits given.
        var fat = TriacylglycerolName.Parse(name)!.Value;
        WesdorpCorrelation.MeltingPoint(fat, Polymorph.Beta).ShouldBe(celsius, 0.05);
        WesdorpCorrelation.EnthalpyOfFusion(fat, Polymorph.Beta).ShouldBe(enthalpy, 0.05);
    }

    [Theory]
    [InlineData("POS", 35.9)]
    [InlineData("POP", 36.7)]
    [InlineData("SOS", 43.0)]
    public void Of_MeasuredFats_TakesTheMeasuredMeltingPoint(string name, double celsius) =>

        // Arishima 1991, abstract (read): the most stable beta forms; taken over as printed.
        PureSpecies.Of(TriacylglycerolName.Parse(name)!.Value).MeltingPoint.ShouldBe(celsius);

    [Theory]
    [InlineData("LaMP")]
    [InlineData("POS")]
    [InlineData("PoOLn")]
    [InlineData("CyCLa")]
    public void Parse_Name_IsReadBack(string name) => TriacylglycerolName.Of(TriacylglycerolName.Parse(name)!.Value).ShouldBe(name);

    [Fact]
    public void Parse_EveryLetterOfTheCatalogue_HasItsChain()
    {
        foreach (var letter in Materia.Catalogue.TriacylglycerolSpecies.Letters)
        {
            TriacylglycerolName.Parse($"{letter}{letter}{letter}")!.Value.Sn1.DoubleBonds.ShouldBe(letter switch { "Po" or "O" or "E" => 1, "L" => 2, "Ln" => 3, _ => 0 }, letter);
        }
    }

    [Theory]
    [InlineData("SO")]
    [InlineData("SOSS")]
    [InlineData("SXS")]
    [InlineData("")]
    public void Parse_NoFat_IsNull(string name) => TriacylglycerolName.Parse(name).ShouldBeNull();

    [Fact]
    public void Distribute_AnyRatio_KeepsTheAcids()
    {
        // Mass balance: every chain placed is a chain given. The middle ratio 0.3 asks for no more unsaturated chains than there are.
        (Chain Chain, double Fraction)[] overall = [(Saturated(16), 0.3), (Saturated(18), 0.25), (Oleic, 0.35), (Linoleic, 0.1)];
        var fats = PositionalDistribution.Distribute(overall, PositionalDistribution.Middle(overall, 0.3));
        fats.Values.Sum().ShouldBe(1, 1e-12);
        foreach (var (chain, fraction) in overall)
        {
            var placed = fats.Sum(f => f.Value * (new[] { f.Key.Sn1, f.Key.Sn2, f.Key.Sn3 }.Count(c => c == chain) / 3.0));
            placed.ShouldBe(fraction, 1e-12);
        }
    }
}
