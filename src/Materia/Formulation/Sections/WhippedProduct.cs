using System.Globalization;
using Materia.Chemistry;
using Materia.Chemistry.Rules;

namespace Materia.Formulation.Sections;

/// <summary>The density of a whipped product: the same mass in a volume that is larger by the overrun.</summary>
public sealed record WhippedProduct
{
    /// <summary>The gain in volume by air [%], as it was given.</summary>
    public required decimal OverrunPercent { get; init; }

    /// <summary>The air in it, in percent of the whipped volume.</summary>
    public required double AirPercent { get; init; }

    /// <summary>The density [g/mL], at the temperature stated.</summary>
    public required TemperatureFigure Value { get; init; }

    /// <summary>The density before whipping [g/mL].</summary>
    public required TemperatureFigure Unwhipped { get; init; }

    internal static WhippedProduct Of(TemperatureFigure unwhipped, decimal overrun)
    {
        var percent = (double)overrun;
        return new WhippedProduct
        {
            OverrunPercent = overrun,
            AirPercent = 100 * WhippedDensity.AirFraction(percent),
            Value = unwhipped with
            {
                Value = WhippedDensity.Of(unwhipped.Value, percent),
                Low = WhippedDensity.Of(unwhipped.Low, percent),
                High = WhippedDensity.Of(unwhipped.High, percent),
            },
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
