namespace Materia.Chemistry.Rules;

/// <summary>
/// Density of air-free water at atmospheric pressure, for turning a relative density into a density. Source: <c>tanaka-2001</c>, its
/// constants recalled; it gives 999.10 at 15 °C and 998.21 at 20 °C. Valid from 0 to 40 °C, error below 0.01 kg/m3; used a little above that.
/// </summary>
public static class WaterDensity
{
    /// <summary>999.97495 · (1 − (t − 3.983035)² (t + 301.797) / (522528.9 (t + 69.34881))) [kg/m3].</summary>
    /// <param name="temperature">t [Cel].</param>
    public static double At(double temperature)
    {
        var fromMaximum = temperature - 3.983035;
        return 999.97495 * (1 - (fromMaximum * fromMaximum * (temperature + 301.797) / (522528.9 * (temperature + 69.34881))));
    }
}
