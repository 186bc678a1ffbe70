namespace Materia.Chemistry.Rules;

/// <summary>
/// How much suspended particles thicken a liquid. Source: <c>mueller-2010</c>, which found the form accurate for one-sized particles of any
/// shape; the packing limit matters more than the equation. Clays flocculate in oil: a factor of 1.5 at best below 0.7 of the limit. No
/// value is to be given above 0.9 of it.
/// </summary>
public static class MaronPierce
{
    /// <summary>The share of the packing limit above which no figure is given [1].</summary>
    public const double Refusal = 0.9;

    /// <summary>The packing limit of a powder whose oil absorption is not known: the middle of the 0.40 to 0.50 usual for clays and plant powders (recalled) [1].</summary>
    public const double UsualPacking = 0.45;

    /// <summary>Relative viscosity: (1 − φ/φm)⁻² [1].</summary>
    /// <param name="volumeFraction">Volume fraction φ of the particles, 0 to below φm [1].</param>
    /// <param name="maximumPacking">The packing limit φm, above 0 to 1 [1].</param>
    /// <exception cref="ArgumentOutOfRangeException">φ is negative or reaches φm.</exception>
    public static double RelativeViscosity(double volumeFraction, double maximumPacking)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(volumeFraction);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(volumeFraction, maximumPacking);
        var room = 1 - (volumeFraction / maximumPacking);
        return 1 / (room * room);
    }

    /// <summary>Relative viscosity of a dilute suspension of spheres, the least that particles can do: 1 + 2.5 φ [1]. Source: <c>einstein-1906</c>.</summary>
    /// <param name="volumeFraction">Volume fraction φ of the particles [1].</param>
    public static double Dilute(double volumeFraction) => 1 + (2.5 * volumeFraction);

    /// <summary>
    /// The packing limit of a powder from its oil absorption, taken as the point where the oil just fills the gaps: 1 / (1 + OA ρs / (100 ρo))
    /// [1]. Source: <c>astm-d281</c> for the measurement; the relation is recalled.
    /// </summary>
    /// <param name="oilAbsorption">OA [g/(100.g)].</param>
    /// <param name="powderDensity">True density ρs of the powder [g/mL].</param>
    /// <param name="oilDensity">Density ρo of the oil of the test, linseed oil unless stated [g/mL].</param>
    public static double PackingFromOilAbsorption(double oilAbsorption, double powderDensity, double oilDensity = 0.93) =>
        1 / (1 + (oilAbsorption * powderDensity / (100 * oilDensity)));
}
