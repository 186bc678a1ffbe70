using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>
/// Paraffin wax as its n-alkanes. Mixtures of many of them crystallise as one solid solution that stands for an alkane of their mean
/// length (dirand-2002, read in the abstract), so they are one class of ideal mixing.
/// <para>Melting points: Tm = 414.3 K·(n − 1.5)/(n + 5.0) (broadhurst-1962, read in the abstract, where it is given for more than 44
/// carbons; below that it lies 1 K low at 36 and 3 K at 20). Heat of fusion: 186 J/g, the middle of 168 to 203, which
/// paraffin's is printed to lie near (zhang-2011, read in the abstract). Chain lengths spread as a bell with a standard deviation of
/// 3 carbons (recalled); its middle is where the whole just melts at the wax's own melting point, so that the first two matter little.</para>
/// Microcrystalline wax, ozokerite, ceresin and petrolatum are branched or part oil, and no heat of fusion or solid content of theirs
/// was found in print: they stay unknown.
/// </summary>
internal static class ParaffinWax
{
    private const double Spread = 3;
    private const int Reach = 9;
    private const double JoulesPerGram = 186;
    private const double Shortest = 12;
    private const double Longest = 70;

    private static readonly Seen Equation = new("broadhurst-1962", Evidence.Published);
    private static readonly Seen Heat = new("zhang-2011", Evidence.Published);

    /// <summary>The species of a paraffin wax whose melting is held, by the INCI name <c>Paraffin</c>; <see langword="null"/> for another ingredient.</summary>
    public static IngredientSpecies? Of(Ingredient ingredient)
    {
        if (!ingredient.Names.Any(n => n.Kind == NameKind.Inci && string.Equals(n.Text, "Paraffin", StringComparison.OrdinalIgnoreCase))
            || (StoredFigures.Find(ingredient, Property.MeltingRange) ?? StoredFigures.Find(ingredient, Property.MeltingPoint)) is not { } melting)
        {
            return null;
        }

        var (low, middle, high) = ((double)melting.Least(), (double)melting.Central(), (double)melting.Greatest());
        return new()
        {
            Species = MeltingAt(middle),
            Softest = low < middle ? MeltingAt(low) : null,
            Firmest = high > middle ? MeltingAt(high) : null,
            Basis = "n-alkanes about the length that melts where the wax does",
        };
    }

    /// <summary>The alkanes of a wax that just melts at <paramref name="celsius"/> [mol/g].</summary>
    private static List<(PureSpecies, double)> MeltingAt(double celsius)
    {
        double low = Shortest, high = Longest;
        while (high - low > 1e-6)
        {
            // An ideal solid solution is just melted when Σ K·x = 1, a sum that grows with the chains.
            var mean = (low + high) / 2;
            var sum = Chains(mean).Sum(c => c.Moles * Math.Exp(Enthalpy(c.Carbons) / SpeciesSystem.GasConstant * ((1 / (celsius + 273.15)) - (1 / Kelvin(c.Carbons)))));
            (low, high) = sum < 1 ? (mean, high) : (low, mean);
        }

        var chains = Chains((low + high) / 2);
        var mass = chains.Sum(c => c.Moles * MolarMass(c.Carbons));
        return [.. chains.Select(c => (Alkane(c.Carbons), c.Moles / mass))];
    }

    private static List<(int Carbons, double Moles)> Chains(double mean)
    {
        List<(int Carbons, double Weight)> bell = [];
        for (var n = (int)Math.Ceiling(mean - Reach); n <= mean + Reach; n++)
        {
            var away = (n - mean) / Spread;
            bell.Add((n, Math.Exp(-away * away / 2)));
        }

        var sum = bell.Sum(c => c.Weight);
        return [.. bell.Select(c => (c.Carbons, c.Weight / sum))];
    }

    private static PureSpecies Alkane(int carbons) =>
        new(FormattableString.Invariant($"C{carbons} alkane"), CrystalClass.Paraffin, MolarMass(carbons), Kelvin(carbons) - 273.15, Enthalpy(carbons) / 1000, Equation, Heat);

    private static double MolarMass(int carbons) => (12.011 * carbons) + (1.008 * ((2 * carbons) + 2));

    private static double Enthalpy(int carbons) => JoulesPerGram * MolarMass(carbons);

    private static double Kelvin(int carbons) => 414.3 * (carbons - 1.5) / (carbons + 5.0);
}
