namespace Materia.Chemistry.Melting;

/// <summary>
/// Melting point and enthalpy of fusion of free saturated fatty alcohols and acids. Melting points: ons-melting-points (read);
/// enthalpies of acids C10 to C18: crc-enthalpy-fusion (read); of C20 and C22 acids: extrapolated by 8 to 9 kJ/mol for two
/// carbons, ours; of alcohols the total of melting and rotator transition, since that governs solubility at room
/// temperature: mosselman-1974 (recalled), C12 read, C20 interpolated.
/// </summary>
public static class FreeChains
{
    private static readonly Seen Collection = new("ons-melting-points", Catalogue.Evidence.Published);
    private static readonly Seen Handbook = new("crc-enthalpy-fusion", Catalogue.Evidence.Published);

    private static readonly Dictionary<int, (double Celsius, double Enthalpy, Seen Enthalpies)> Alcohols = new()
    {
        [12] = (24.0, 40.2, Handbook),
        [14] = (39.0, 47.6, Seen.Recalled),
        [16] = (49.5, 57, Seen.Recalled),
        [18] = (59.0, 66, Seen.Recalled),
        [20] = (65.0, 74, Seen.InModel),
        [22] = (71.0, 82, Seen.Recalled),
    };

    private static readonly Dictionary<int, (double Celsius, double Enthalpy, Seen Enthalpies)> Acids = new()
    {
        [10] = (31.0, 27.8, Handbook),
        [12] = (43.6, 36.3, Handbook),
        [14] = (55.0, 45.1, Handbook),
        [16] = (61.8, 53.7, Handbook),
        [18] = (69.3, 61.2, Handbook),
        [20] = (75.0, 72, Seen.InModel),
        [22] = (80.0, 79, Seen.InModel),
    };

    /// <summary>The free alcohol of <paramref name="chain"/>; unsaturated and short ones count as liquid.</summary>
    public static PureSpecies Alcohol(Chain chain, string name) => Of(Alcohols, CrystalClass.Alcohol, chain, chain.AcidMolarMass - 15.999 + 2.016, name);

    /// <summary>The free acid of <paramref name="chain"/>; unsaturated and short ones count as liquid.</summary>
    public static PureSpecies Acid(Chain chain, string name) => Of(Acids, CrystalClass.FreeAcid, chain, chain.AcidMolarMass, name);

    private static PureSpecies Of(
        Dictionary<int, (double Celsius, double Enthalpy, Seen Enthalpies)> known, CrystalClass @class, Chain chain, double molarMass, string name) =>
        chain.IsSaturated && known.TryGetValue(chain.Carbons, out var figures)
            ? new(name, @class, molarMass, figures.Celsius, figures.Enthalpy, Collection, figures.Enthalpies)
            : PureSpecies.Liquid(name, molarMass);
}
