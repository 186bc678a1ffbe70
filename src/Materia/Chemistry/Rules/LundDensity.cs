namespace Materia.Chemistry.Rules;

/// <summary>
/// Density of a liquid triglyceride oil from its saponification and iodine value. Source: Lund's relation as <c>rodenbush-1999</c>
/// quotes it. The hydroxyl term (0.057) was fitted for this library to castor oil at 10 °C, and the slope (0.66) chosen among the
/// measured slopes 0.64 to 0.70. Valid from 10 to 110 °C for melted triglycerides; not for wax esters (1.7 % too dense for jojoba),
/// hydrocarbons, silicones or essential oils. Error ±0.4 %.
/// </summary>
public static class LundDensity
{
    /// <summary>The largest deviation seen on 44 measured points, as a share of the density [1].</summary>
    public const double Error = 0.004;

    /// <summary>How much the density of an oil falls with each kelvin [kg/m3].</summary>
    public const double Slope = 0.66;

    private const double WaterAtFifteen = 999.1;

    /// <summary>Relative density 15 °C/15 °C: 0.8475 + 3.0e-4 SV + 1.4e-4 IV + 0.057 x [1].</summary>
    /// <param name="saponificationValue">SV [mg/g].</param>
    /// <param name="iodineValue">IV [g/(100.g)].</param>
    /// <param name="hydroxyFraction">Mole fraction x of hydroxy acids among the fatty acids, 0 to 1 [1].</param>
    public static double RelativeDensity(double saponificationValue, double iodineValue, double hydroxyFraction = 0) =>
        0.8475 + (3.0e-4 * saponificationValue) + (1.4e-4 * iodineValue) + (0.057 * hydroxyFraction);

    /// <summary>Density at <paramref name="temperature"/>: 999.1 sg − 0.66 (T − 15) [kg/m3].</summary>
    /// <param name="saponificationValue">SV [mg/g].</param>
    /// <param name="iodineValue">IV [g/(100.g)].</param>
    /// <param name="hydroxyFraction">Mole fraction of hydroxy acids, 0 to 1 [1].</param>
    /// <param name="temperature">T [Cel].</param>
    public static double Of(double saponificationValue, double iodineValue, double hydroxyFraction, double temperature) =>
        (WaterAtFifteen * RelativeDensity(saponificationValue, iodineValue, hydroxyFraction)) - (Slope * (temperature - 15));
}
