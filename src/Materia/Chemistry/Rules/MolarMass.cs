namespace Materia.Chemistry.Rules;

/// <summary>Molar masses that the arithmetic of fats rests on [g/mol].</summary>
public static class MolarMass
{
    /// <summary>Iodine, I₂.</summary>
    public const double Iodine = 253.809;

    /// <summary>Potassium hydroxide.</summary>
    public const double PotassiumHydroxide = 56.106;

    /// <summary>Sodium hydroxide.</summary>
    public const double SodiumHydroxide = 39.997;

    /// <summary>What glycerol adds to three fatty acids in a triglyceride: glycerol less three waters.</summary>
    public const double GlycerolResidue = 38.049;

    /// <summary>Water, which leaves when an acid and an alcohol join.</summary>
    public const double Water = 18.015;

    /// <summary>A fatty acid from its formula: M = 12.011 C + 1.008 (2 C − 2 D − 2 R) + 15.999 (2 + O) [g/mol].</summary>
    /// <param name="carbons">Carbon atoms C.</param>
    /// <param name="doubleBonds">Carbon-carbon double bonds D.</param>
    /// <param name="rings">Rings R: of a cyclopropene or an epoxide.</param>
    /// <param name="oxygens">Oxygen atoms O beyond the carboxyl group's two.</param>
    public static double OfAcid(int carbons, int doubleBonds, int rings = 0, int oxygens = 0) =>
        (12.011 * carbons) + (1.008 * ((2 * carbons) - (2 * doubleBonds) - (2 * rings))) + (15.999 * (2 + oxygens));
}
