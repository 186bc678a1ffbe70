using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Heating;

/// <summary>
/// Cooling or warming of a filled vessel in steps of at most 1 °C: in each, Newton's law with the heat of what crystallises or melts in
/// that step spread over it.
/// </summary>
internal static class CoolingRun
{
    /// <summary>How far the time may be off, as a factor either way; no measured curve was found to check it with.</summary>
    public const double Factor = 2;

    /// <summary>The time from one temperature to another [min]; infinite where the surroundings stop it on the way.</summary>
    /// <param name="heat">The heat in the blend.</param>
    /// <param name="mass">Its mass [g].</param>
    /// <param name="filled">The vessel.</param>
    /// <param name="coefficient">Heat passing to the surroundings [W/(m2.K)].</param>
    /// <param name="from">Temperature at the start [Cel].</param>
    /// <param name="to">Temperature at the end [Cel].</param>
    /// <param name="surroundings">Temperature of the surroundings [Cel].</param>
    public static double Minutes(HeatContent heat, double mass, FilledVessel filled, double coefficient, double from, double to, double surroundings)
    {
        var steps = (int)Math.Ceiling(Math.Abs(to - from));
        if (steps == 0)
        {
            return 0;
        }

        var conductance = filled.Conductance(coefficient);
        var step = (to - from) / steps;
        double seconds = 0;
        for (var i = 0; i < steps; i++)
        {
            var (start, end) = (from + (i * step), from + ((i + 1) * step));
            var capacity = (mass * (heat.SpecificHeat + (heat.Latent(start, end) / step))) + filled.WallCapacity;
            seconds += NewtonCooling.Time(capacity, conductance, start, end, surroundings);
        }

        return seconds / 60;
    }
}
