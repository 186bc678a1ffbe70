namespace Materia.Chemistry.Materials;

/// <summary>The temperatures at which viscosity is given: those of a room, skin and scalp, and the steps of melting and filling.</summary>
internal static class FlowTemperatures
{
    /// <summary>The temperatures [Cel], rising.</summary>
    public static IReadOnlyList<double> All { get; } = [20, 25, 32, 40, 50, 60, 70, 80];
}
