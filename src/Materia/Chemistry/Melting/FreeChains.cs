namespace Materia.Chemistry.Melting;

/// <summary>
/// Melting point and enthalpy of fusion of free saturated fatty alcohols and acids. Melting points: ons-melting-points (read);
/// enthalpies of acids C10 to C18: crc-enthalpy-fusion (read); of C20 and C22 acids: extrapolated by 8 to 9 kJ/mol for two
/// carbons, ours; of alcohols the total of melting and rotator transition, since that governs solubility at room
/// temperature: mosselman-1974 (recalled), C12 read, C20 interpolated.
/// </summary>
public static class FreeChains
{
    private static readonly Dictionary<int, (double Celsius, double Enthalpy)> Alcohols = new()
    {
        [12] = (24.0, 40.2),
        [14] = (39.0, 47.6),
        [16] = (49.5, 57),
        [18] = (59.0, 66),
        [20] = (65.0, 74),
        [22] = (71.0, 82),
    };

    private static readonly Dictionary<int, (double Celsius, double Enthalpy)> Acids = new()
    {
        [10] = (31.0, 27.8),
        [12] = (43.6, 36.3),
        [14] = (55.0, 45.1),
        [16] = (61.8, 53.7),
        [18] = (69.3, 61.2),
        [20] = (75.0, 72),
        [22] = (80.0, 79),
    };

    /// <summary>The free alcohol of <paramref name="chain"/>; unsaturated and short ones count as liquid.</summary>
    public static PureSpecies Alcohol(Chain chain, string name)
    {
        var molarMass = chain.AcidMolarMass - 15.999 + 2.016;
        return chain.IsSaturated && Alcohols.TryGetValue(chain.Carbons, out var known)
            ? new(name, CrystalClass.Alcohol, molarMass, known.Celsius, known.Enthalpy, "recalled")
            : new(name, CrystalClass.Liquid, molarMass, double.NaN, 0, "counted-as-liquid");
    }

    /// <summary>The free acid of <paramref name="chain"/>; unsaturated and short ones count as liquid.</summary>
    public static PureSpecies Acid(Chain chain, string name) =>
        chain.IsSaturated && Acids.TryGetValue(chain.Carbons, out var known)
            ? new(name, CrystalClass.FreeAcid, chain.AcidMolarMass, known.Celsius, known.Enthalpy, chain.Carbons <= 18 ? "crc-enthalpy-fusion" : MeltingSum.Method)
            : new(name, CrystalClass.Liquid, chain.AcidMolarMass, double.NaN, 0, "counted-as-liquid");
}
