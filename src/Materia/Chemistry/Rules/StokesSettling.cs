namespace Materia.Chemistry.Rules;

/// <summary>
/// How fast a small sphere sinks in a liquid at rest: v = (ρp − ρf) g d² / (18 η). Source: <c>stokes-soil-example</c> prints it with a worked
/// number. It holds for grains apart from each other at a Reynolds number under about 0.1; flocs sink faster, plates and crowded grains slower.
/// </summary>
public static class StokesSettling
{
    /// <summary>Standard gravity [m/s2].</summary>
    public const double Gravity = 9.80665;

    /// <summary>The settling velocity [m/s]; negative where the grain is lighter than the liquid and rises.</summary>
    /// <param name="diameter">Diameter d of the grain [um].</param>
    /// <param name="grainDensity">Density ρp of the grain [g/mL].</param>
    /// <param name="liquidDensity">Density ρf of the liquid [g/mL].</param>
    /// <param name="viscosity">Dynamic viscosity η of the liquid, above nought [mPa.s].</param>
    public static double Velocity(double diameter, double grainDensity, double liquidDensity, double viscosity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(viscosity);
        var d = diameter * 1e-6;
        return 1000 * (grainDensity - liquidDensity) * Gravity * d * d / (18 * viscosity * 1e-3);
    }
}
