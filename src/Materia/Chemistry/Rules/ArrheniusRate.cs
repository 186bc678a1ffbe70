namespace Materia.Chemistry.Rules;

/// <summary>
/// How temperature speeds a reaction up, by Arrhenius: the ratio for ten kelvin, Q10 = exp(10 E / (R T (T + 10))). Oxidation of oils:
/// Q10 2 to 3 (<c>frankel-2005</c>); activation energies of 50 to 104 kJ/mol (<c>tan-2001</c>, <c>manzocco-2012</c>), a span that makes any
/// number of months worthless.
/// </summary>
public static class ArrheniusRate
{
    private const double GasConstant = 8.314;

    /// <summary>Q10 between <paramref name="temperature"/> and ten kelvin more [1].</summary>
    /// <param name="activationEnergy">E [kJ/mol].</param>
    /// <param name="temperature">The lower temperature [Cel].</param>
    public static double Q10(double activationEnergy, double temperature)
    {
        var kelvin = temperature + 273.15;
        return Math.Exp(10 * activationEnergy * 1000 / (GasConstant * kelvin * (kelvin + 10)));
    }
}
