namespace Materia.Chemistry.Rules;

/// <summary>
/// The iodine that a substance takes up, from its double bonds: one molecule of iodine for each. Sources: <c>aocs-cd-1c-85</c>,
/// <c>iso-3961-2018</c>. Valid for isolated double bonds; conjugated ones do not take up iodine fully.
/// </summary>
public static class IodineFactor
{
    /// <summary>A fatty acid bound in a triglyceride: 253.809 · 3 D / (3 M + 38.049) [g/(100.g) for each percent of the acid].</summary>
    /// <param name="molarMass">Molar mass M of the free acid [g/mol].</param>
    /// <param name="doubleBonds">Double bonds D of the acid [1].</param>
    /// <example>Oleic acid, 282.47 g/mol: 0.860.</example>
    public static double OfTriglyceride(double molarMass, int doubleBonds) =>
        MolarMass.Iodine * 3 * doubleBonds / ((3 * molarMass) + MolarMass.GlycerolResidue);

    /// <summary>A pure substance or a free fatty acid: 253.809 D / M [g/(100.g) for each percent of the substance].</summary>
    /// <param name="molarMass">Molar mass M [g/mol].</param>
    /// <param name="doubleBonds">Double bonds D of the whole molecule, as a mean where it is a mixture [1].</param>
    /// <example>Free oleic acid, 282.47 g/mol: 0.8986.</example>
    public static double OfSubstance(double molarMass, double doubleBonds) => MolarMass.Iodine * doubleBonds / molarMass;
}
