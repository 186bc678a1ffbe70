namespace Materia.Chemistry.Rules;

/// <summary>
/// The potassium hydroxide that a substance consumes, one mole for each ester or acid group. Source: <c>aocs-cd-3a-94</c> for the
/// idea; the mean over mixed acids is by moles here, which is exact.
/// </summary>
public static class SaponificationEquivalent
{
    /// <summary>Sodium hydroxide for each gram of potassium hydroxide, 39.997/56.106 [1].</summary>
    public const double SodiumHydroxideRatio = MolarMass.SodiumHydroxide / MolarMass.PotassiumHydroxide;

    /// <summary>A triglyceride: 3000 · 56.106 / (3 M + 38.049) [mg/g].</summary>
    /// <param name="meanMolarMass">Mean molar mass M of its fatty acids, by moles [g/mol].</param>
    /// <example>Triolein, 282.47 g/mol: 190.1.</example>
    public static double OfTriglyceride(double meanMolarMass) =>
        3000 * MolarMass.PotassiumHydroxide / ((3 * meanMolarMass) + MolarMass.GlycerolResidue);

    /// <summary>A free fatty acid, a wax ester or another substance with n such groups: 1000 · 56.106 n / M [mg/g].</summary>
    /// <param name="molarMass">Molar mass M [g/mol].</param>
    /// <param name="groups">Ester and acid groups n in one molecule [1].</param>
    /// <example>Oleic acid, 282.47 g/mol: 198.6.</example>
    public static double OfSubstance(double molarMass, int groups = 1) => 1000 * MolarMass.PotassiumHydroxide * groups / molarMass;
}
