namespace Materia.Chemistry.Rules;

/// <summary>The water activity of a solution of humectants.</summary>
public static class NorrishWaterActivity
{
    /// <summary>Molar mass of water [g/mol].</summary>
    public const double WaterMolarMass = 18.015;

    /// <summary>
    /// a = x_w exp(−(Σ √|K_i| x_i)²), x the mole fractions. K is −1.16 for glycerol, −1.65 for sorbitol and −6.47 for sucrose, all
    /// recalled (to be looked up in <c>norrish-1966</c>). Good to 0.02; below about 0.70 no claim rests on it.
    /// </summary>
    /// <param name="waterMass">Mass of the water [g], above nought.</param>
    /// <param name="solutes">Mass [g], molar mass [g/mol] and K [1] of each solute; K is negative.</param>
    /// <returns>The water activity, 0 to 1 [1].</returns>
    /// <example>50 g of glycerol in 50 g of water: 0.81.</example>
    public static double Of(double waterMass, IReadOnlyList<(double Mass, double MolarMass, double K)> solutes)
    {
        ArgumentNullException.ThrowIfNull(solutes);
        var water = waterMass / WaterMolarMass;
        var total = water + solutes.Sum(s => s.Mass / s.MolarMass);
        var bend = solutes.Sum(s => Math.Sqrt(Math.Abs(s.K)) * s.Mass / s.MolarMass / total);
        return water / total * Math.Exp(-bend * bend);
    }
}
