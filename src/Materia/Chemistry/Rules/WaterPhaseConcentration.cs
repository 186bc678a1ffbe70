namespace Materia.Chemistry.Rules;

/// <summary>What stays of a preservative in the water of an emulsion when oil takes up part of it.</summary>
public static class WaterPhaseConcentration
{
    /// <summary>
    /// C_w = C (φ + 1)/(K φ + 1), at most the solubility in water (<c>jscc-23-714</c>, read there with its tables for parabens). For an
    /// acid K is that of the undissociated form times its share, and C_w counts both forms.
    /// </summary>
    /// <param name="overall">Concentration in the whole emulsion [% w/v].</param>
    /// <param name="partition">Concentration in the oil over that in the water at equilibrium [1].</param>
    /// <param name="oilToWater">Volume of oil over volume of water [1].</param>
    /// <param name="solubility">Solubility in water [% w/v]; infinite where it is not known.</param>
    /// <returns>Concentration in the water [% w/v].</returns>
    /// <example>0.2 % with K = 80 and 0.43 parts of oil to one of water: 0.008 %.</example>
    public static double Of(double overall, double partition, double oilToWater, double solubility = double.PositiveInfinity) =>
        Math.Min(overall * (oilToWater + 1) / ((partition * oilToWater) + 1), solubility);
}
