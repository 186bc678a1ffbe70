using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>The triacylglycerols of a fat by mole fraction, and how far its spread moves them.</summary>
/// <param name="ingredient">The fat.</param>
/// <param name="acids">Its fatty acids.</param>
/// <param name="shares">Their shares by mass [%].</param>
/// <param name="printed">Its triacylglycerols as printed, where they are.</param>
internal sealed class FatComposition(Ingredient ingredient, FattyAcid[] acids, double[] shares, TriacylglycerolProfile? printed)
{
    /// <summary>Mole fractions in the usual composition, adding up to 1.</summary>
    public Dictionary<Triacylglycerol, double> Usual { get; } = Fill(printed is null ? null : PublishedComposition.Usual(printed), Generate(ingredient, acids, shares));

    /// <summary>
    /// Mole fractions at one end of the spread; <see langword="null"/> when nothing tells how far that is. Generated fats are generated
    /// anew. Printed ones move within their own printed ranges; where there are none, every share changes by the factor by which the
    /// generated share of the same fat does.
    /// </summary>
    public Dictionary<Triacylglycerol, double>? At(Firmness firmness, FattyAcidProfile profile)
    {
        var moved = AcidSpread.At(firmness, ingredient, profile, acids, shares);
        var generated = moved is null ? null : Generate(ingredient, acids, moved);
        if (printed is null)
        {
            return generated;
        }

        if (PublishedComposition.At(firmness, ingredient, printed) is { } ends)
        {
            return Fill(ends, generated ?? Generate(ingredient, acids, shares));
        }

        return generated is null ? null : Scaled(Usual, Generate(ingredient, acids, shares), generated);
    }

    private static Dictionary<Triacylglycerol, double> Fill(IReadOnlyList<(string Species, double Percent)>? named, Dictionary<Triacylglycerol, double> generated) =>
        named is null ? generated : PublishedComposition.Fill(named, generated);

    private static Dictionary<Triacylglycerol, double>? Scaled(
        Dictionary<Triacylglycerol, double> fats, Dictionary<Triacylglycerol, double> before, Dictionary<Triacylglycerol, double> after)
    {
        // A fat that cannot be generated, for want of one of its acids in the sample, keeps its share.
        var scaled = fats.ToDictionary(p => p.Key, p => p.Value * (before.TryGetValue(p.Key, out var from) ? after.GetValueOrDefault(p.Key) / from : 1));
        var sum = scaled.Values.Sum();

        // Nothing is left where the spread takes away an acid that every printed fat holds: then it tells nothing of them.
        return sum > 0 && double.IsFinite(sum) ? scaled.ToDictionary(p => p.Key, p => p.Value / sum) : null;
    }

    private static Dictionary<Triacylglycerol, double> Generate(Ingredient ingredient, FattyAcid[] acids, double[] shares)
    {
        var chains = new Dictionary<Chain, double>();
        for (var i = 0; i < acids.Length; i++)
        {
            var chain = ChainOfAcid.Of(acids[i]);
            chains[chain] = chains.GetValueOrDefault(chain) + (shares[i] / (double)acids[i].MolarMass);
        }

        var moles = chains.Values.Sum();
        (Chain Chain, double Fraction)[] overall = [.. chains.Where(p => p.Value > 0).Select(p => (p.Key, p.Value / moles))];
        return PositionalDistribution.Distribute(overall, MiddlePosition.Of(ingredient, overall));
    }
}
