namespace Materia.Chemistry.Rules;

/// <summary>
/// Kinematic viscosity against temperature in the double-logarithmic form of <c>astm-d341</c>: W = log₁₀ log₁₀ (ν + 0.7), linear in log T.
/// </summary>
public static class WaltherViscosity
{
    /// <summary>The reference temperature, 40 °C [K].</summary>
    public const double ReferenceTemperature = 313.15;

    /// <summary>The error of the composition model, as a share of ν: mean 5.5 % and at most 15 % on points that were not fitted [1].</summary>
    public const double Error = 0.15;

    /// <summary>W of a viscosity [1].</summary>
    /// <param name="kinematicViscosity">ν, above 0.3 [mm2/s].</param>
    public static double Ordinate(double kinematicViscosity) => Math.Log10(Math.Log10(kinematicViscosity + 0.7));

    /// <summary>The viscosity of a W: ν = 10^(10^W) − 0.7 [mm2/s].</summary>
    /// <param name="ordinate">W [1].</param>
    public static double FromOrdinate(double ordinate) => Math.Pow(10, Math.Pow(10, ordinate)) - 0.7;

    /// <summary>W of one oil: A − B log₁₀ (T/313.15) [1].</summary>
    /// <param name="a">A, W at 40 °C [1].</param>
    /// <param name="b">B [1].</param>
    /// <param name="temperature">T [Cel].</param>
    public static double OfOil(double a, double b, double temperature) => a - (b * Math.Log10((temperature + 273.15) / ReferenceTemperature));

    /// <summary>
    /// W of a liquid triglyceride from its fatty acids, means by moles:
    /// 0.24400 + 0.01350 (C − 18) − 0.03910 D + 0.19676 H − u (1.27023 + 0.25612 H − 0.02385 (C − 18)), u = ln(T/313.15) [1].
    /// The coefficients were fitted for this library by weighted least squares on 65 points of <c>ryan-1984</c>, <c>goering-1982</c>,
    /// <c>peterson-1983</c>, <c>noureddini-1992-viscosity</c>, <c>magne-1945</c> and castor oil of <c>rescorla-1936</c>, all read in
    /// <c>svo-compilation</c>. Valid in the liquid state from 0 to 110 °C for C 12.5 to 21.5, D 0.1 to 2.1 and H 0 or about 0.9.
    /// </summary>
    /// <param name="carbons">Mean carbons C of a chain [1].</param>
    /// <param name="doubleBonds">Mean double bonds D of a chain [1].</param>
    /// <param name="hydroxyls">Mean hydroxyl groups H of a chain [1].</param>
    /// <param name="temperature">T [Cel].</param>
    public static double OfComposition(double carbons, double doubleBonds, double hydroxyls, double temperature)
    {
        var u = Math.Log((temperature + 273.15) / ReferenceTemperature);
        return 0.24400 + (0.01350 * (carbons - 18)) - (0.03910 * doubleBonds) + (0.19676 * hydroxyls)
            - (u * (1.27023 + (0.25612 * hydroxyls) - (0.02385 * (carbons - 18))));
    }
}
