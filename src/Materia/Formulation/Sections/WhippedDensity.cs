using System.Globalization;
using Materia.Chemistry;

namespace Materia.Formulation.Sections;

/// <summary>The density of a whipped product: the same mass in a volume that is larger by the overrun.</summary>
public sealed record WhippedDensity
{
    /// <summary>The gain in volume by air [%], as it was given.</summary>
    public required decimal OverrunPercent { get; init; }

    /// <summary>The air in it, in percent of the whipped volume.</summary>
    public required double AirPercent { get; init; }

    /// <summary>The density [g/mL], at the temperature stated.</summary>
    public required TemperatureFigure Value { get; init; }

    /// <summary>The density before whipping [g/mL].</summary>
    public required TemperatureFigure Unwhipped { get; init; }

    internal static WhippedDensity Of(TemperatureFigure unwhipped, decimal overrun)
    {
        var gain = 1 + ((double)overrun / 100);
        return new WhippedDensity
        {
            OverrunPercent = overrun,
            AirPercent = 100 * (1 - (1 / gain)),
            Value = unwhipped with { Value = unwhipped.Value / gain, Low = unwhipped.Low / gain, High = unwhipped.High / gain },
            Unwhipped = unwhipped,
        };
    }

    internal ExplainedStep Step() => new()
    {
        What = "density of the whipped product",
        Equation = "ρ(whipped) = ρ(before) / (1 + overrun / 100)",
        Arithmetic = string.Create(CultureInfo.InvariantCulture, $"{Unwhipped.Value:0.####} / (1 + {OverrunPercent:0.##} / 100) = {Value.Value:0.####} g/mL"),
    };
}
