using Materia.Chemistry.Melting;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>Makes species for tests of the equilibrium.</summary>
internal static class MeltingFats
{
    public static Chain Saturated(int carbons) => new(carbons, ChainKind.Saturated);

    public static Chain Oleic { get; } = new(18, ChainKind.CisMonoene);

    public static Chain Linoleic { get; } = new(18, ChainKind.Diene);

    /// <summary>Species of a fat from fatty acids in percent by mass and the ratio of saturated chains in the middle.</summary>
    public static List<Species> Of(double ratio, params ReadOnlySpan<(Chain Chain, double Percent)> acids)
    {
        double moles = 0;
        foreach (var (chain, percent) in acids)
        {
            moles += percent / chain.AcidMolarMass;
        }

        var overall = new List<(Chain, double)>();
        foreach (var (chain, percent) in acids)
        {
            overall.Add((chain, percent / chain.AcidMolarMass / moles));
        }

        return Of(PositionalDistribution.Distribute(overall, PositionalDistribution.Middle(overall, ratio)));
    }

    /// <summary>Species of triacylglycerols in mole shares.</summary>
    public static List<Species> Of(IEnumerable<KeyValuePair<Triacylglycerol, double>> fats) => [.. fats.Select(p => Of(PureSpecies.Of(p.Key), p.Value))];

    public static Species Of(PureSpecies pure, double moles)
    {
        var shift = ClassTable.Of(pure.Class).TemperatureShift;
        return new(pure.Class, moles, pure.MolarMass, pure.MeltingPoint + shift + 273.15, 1000 * pure.EnthalpyOfFusion);
    }

    public static SolidContentCurve Curve(IReadOnlyCollection<Species> species) => new(new SpeciesSystem(species, ClassTable.Of));
}
