namespace Materia.Chemistry.Rules;

/// <summary>
/// Newton's law of cooling for a body of one temperature: t = C/(U A) ln((T₀ − Ta)/(T₁ − Ta)). Source: <c>cengel-convection-notes</c> for the
/// law of convection. It holds within a body for a Biot number h (V/A)/k under 0.1; above that it gives the mean temperature roughly, and the core lags.
/// </summary>
public static class NewtonCooling
{
    /// <summary>The time from one temperature to another [s]; infinite where the surroundings stop it on the way.</summary>
    /// <param name="heatCapacity">Heat capacity C of body and vessel [J/K].</param>
    /// <param name="conductance">Conductance U A, above nought [W/K].</param>
    /// <param name="from">Temperature T₀ at the start [Cel].</param>
    /// <param name="to">Temperature T₁ at the end [Cel].</param>
    /// <param name="surroundings">Temperature Ta of the surroundings [Cel].</param>
    public static double Time(double heatCapacity, double conductance, double from, double to, double surroundings)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(conductance);
        if (from == to)
        {
            return 0;
        }

        var ratio = (from - surroundings) / (to - surroundings);
        return ratio > 1 && double.IsFinite(ratio) ? heatCapacity / conductance * Math.Log(ratio) : double.PositiveInfinity;
    }

    /// <summary>The Biot number h (V/A)/k [1].</summary>
    /// <param name="coefficient">Heat-transfer coefficient h at the surface [W/(m2.K)].</param>
    /// <param name="volume">Volume V [m3].</param>
    /// <param name="area">Surface A, above nought [m2].</param>
    /// <param name="conductivity">Thermal conductivity k of the body, above nought [W/(m.K)].</param>
    public static double Biot(double coefficient, double volume, double area, double conductivity) => coefficient * volume / area / conductivity;
}
