namespace Materia.Chemistry;

/// <summary>A computed figure at one temperature.</summary>
/// <param name="Temperature">The temperature [Cel].</param>
/// <param name="Value">The result, in <paramref name="Unit"/>.</param>
/// <param name="Low">The lower end of its range.</param>
/// <param name="High">The upper end of its range.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
public sealed record TemperatureFigure(double Temperature, double Value, double Low, double High, string Unit);
