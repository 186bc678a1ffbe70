using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>
/// Natural waxes as a few pseudo-components each. Splits and molar masses are a model of ours: the mass-weighted enthalpies
/// add up to the bulk enthalpy, and the melting points are set so that the neat wax has 1 % solid at its drop point. Bulk
/// enthalpies of rice bran, candelilla and carnauba wax were read (dassanayake-2009); that of beeswax is recalled. Sunflower wax is
/// said to be composed much as rice bran wax is (tavernier-2017, read in the abstract), so it is given the same enthalpy; its esters,
/// of 44 to 60 carbons, are taken as C50, and its melting point is the middle of the recalled range. No band of composition is known
/// for these waxes but the range over which they melt: its half width shifts all parts together.
/// </summary>
public static class NaturalWaxes
{
    private static readonly Dictionary<string, (double MassFraction, PureSpecies Species)[]> ById = new(StringComparer.Ordinal)
    {
        ["beeswax"] =
        [
            Part("beeswax esters", 0.60, 69, 190, 690, CrystalClass.WaxEster),
            Part("beeswax alkanes", 0.16, 60.5, 230, 400, CrystalClass.Alkane),
            Part("beeswax acids", 0.14, 78.5, 210, 390, CrystalClass.WaxAcid),
            Part("beeswax complex esters", 0.10, 49.5, 90, 700, CrystalClass.WaxEster),
        ],
        ["rice-bran-wax"] =
        [
            Part("rice bran wax esters", 0.95, 78.5, 195, 780, CrystalClass.WaxEster),
            Part("rice bran wax soft part", 0.05, 60, 120, 700, CrystalClass.WaxEster),
        ],
        ["sunflower-wax"] =
        [
            Part("sunflower wax esters", 0.95, 77.3, 195, 735, CrystalClass.WaxEster),
            Part("sunflower wax soft part", 0.05, 60, 105, 700, CrystalClass.WaxEster),
        ],
        ["candelilla-wax"] =
        [
            Part("candelilla alkanes", 0.50, 75.5, 215, 436, CrystalClass.Alkane),
            Part("candelilla esters", 0.28, 71.5, 60, 700, CrystalClass.WaxEster),
            Part("candelilla acids", 0.08, 79.5, 80, 440, CrystalClass.WaxAcid),
            Part("candelilla resins", 0.14, double.NaN, 0, 600, CrystalClass.Liquid),
        ],
        ["carnauba-wax"] =
        [
            Part("carnauba esters", 0.80, 87, 150, 760, CrystalClass.WaxEster),
            Part("carnauba hydroxy esters", 0.20, 78, 90, 450, CrystalClass.WaxHydroxyEster),
        ],
    };

    /// <summary>The pseudo-components of a wax by ingredient id, with their mass fractions; <see langword="null"/> for a wax that has none.</summary>
    public static IReadOnlyList<(double MassFraction, PureSpecies Species)>? Find(string ingredientId) => ById.GetValueOrDefault(ingredientId);

    /// <summary>The species of a natural wax; <see langword="null"/> for another ingredient.</summary>
    internal static IngredientSpecies? Of(Ingredient ingredient)
    {
        if (Find(ingredient.Id) is not { } parts)
        {
            return null;
        }

        var half = StoredFigures.Find(ingredient, Property.MeltingRange) is { Low: { } low, High: { } high } ? (double)(high - low) / 2 : 0;
        IReadOnlyList<(PureSpecies, double)> Shifted(double kelvin, string mark) =>
            [.. parts.Select(p => (p.Species with { Name = p.Species.Name + mark, MeltingPoint = p.Species.MeltingPoint + kelvin }, p.MassFraction / p.Species.MolarMass))];
        return new()
        {
            Species = Shifted(0, ""),
            Softest = half > 0 ? Shifted(-half, ", soft end") : null,
            Firmest = half > 0 ? Shifted(half, ", firm end") : null,
            Basis = "pseudo-components of a natural wax",
        };
    }

    private static (double MassFraction, PureSpecies Species) Part(string name, double fraction, double melting, double joulesPerGram, double molarMass, CrystalClass @class) =>
        (fraction, new PureSpecies(name, @class, molarMass, melting, joulesPerGram * molarMass / 1000, Seen.InModel, Seen.InModel));
}
