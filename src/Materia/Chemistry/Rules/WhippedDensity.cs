namespace Materia.Chemistry.Rules;

/// <summary>
/// What whipped-in air does to density. Overrun is measured, never predicted: the mass of a cup filled before whipping against the same
/// cup filled after. These are identities of volume; air weighs about 1.2 g in a litre and is neglected (0.1 %).
/// </summary>
public static class WhippedDensity
{
    /// <summary>Density after whipping: ρ / (1 + OR/100), in the unit of <paramref name="density"/>.</summary>
    /// <param name="density">Density ρ before whipping, above nought.</param>
    /// <param name="overrunPercent">Overrun OR, not negative [%].</param>
    public static double Of(double density, double overrunPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(overrunPercent);
        return density / (1 + (overrunPercent / 100));
    }

    /// <summary>The air's share of the volume: OR / (100 + OR), 0 to 1 [1].</summary>
    /// <param name="overrunPercent">Overrun OR, not negative [%].</param>
    public static double AirFraction(double overrunPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(overrunPercent);
        return overrunPercent / (100 + overrunPercent);
    }

    /// <summary>Overrun from two weighings of one volume: 100 (before/after − 1) [%].</summary>
    /// <param name="before">Mass of the filled volume before whipping, in any unit.</param>
    /// <param name="after">Mass of the same volume after whipping, in the same unit, above nought.</param>
    public static double OverrunPercent(double before, double after)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(after);
        return 100 * ((before / after) - 1);
    }
}
