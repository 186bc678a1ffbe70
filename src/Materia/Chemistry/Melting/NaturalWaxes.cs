namespace Materia.Chemistry.Melting;

/// <summary>
/// Natural waxes as a few pseudo-components each. Splits and molar masses are a model of ours: the mass-weighted enthalpies
/// add up to the bulk enthalpy, and the melting points are set so that the neat wax has 1 % solid at its drop point. Bulk
/// enthalpies of rice bran, candelilla and carnauba wax were read (dassanayake-2009); that of beeswax is recalled.
/// </summary>
public static class NaturalWaxes
{
    // Splits and melting points are of this model, so no work is named as their source.
    private const string Source = MeltingSum.Method;

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

    private static (double MassFraction, PureSpecies Species) Part(string name, double fraction, double melting, double joulesPerGram, double molarMass, CrystalClass @class) =>
        (fraction, new PureSpecies(name, @class, molarMass, melting, joulesPerGram * molarMass / 1000, Source));
}
