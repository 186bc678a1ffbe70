using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry;

/// <summary>
/// The liquid part of a blend at one listed temperature: ln ν = Σ φ ln ν_i over volume fractions, the model's and the rule's error on top
/// of the ingredients' own range.
/// </summary>
/// <param name="Kinematic">The kinematic viscosity [mm2/s].</param>
/// <param name="Dynamic">The dynamic viscosity [mPa.s].</param>
/// <param name="Ratio">The thickest component's viscosity over the thinnest's.</param>
internal readonly record struct LiquidMix(Interval Kinematic, Interval Dynamic, double Ratio)
{
    /// <summary>Error of the mixing rule for triglycerides among themselves, as a share.</summary>
    private const double RuleError = 0.10;

    /// <summary>The same where viscosities lie more than fivefold apart, as with castor oil.</summary>
    private const double UnlikeError = 0.20;

    /// <summary>The same with mineral oil and other hydrocarbons.</summary>
    private const double HydrocarbonError = 0.30;

    private const double Unlike = 5;

    /// <param name="blend">The blend.</param>
    /// <param name="index">The place of the temperature in <see cref="FlowTemperatures"/>.</param>
    public static LiquidMix At(Blend blend, int index)
    {
        var temperature = FlowTemperatures.All[index];
        double mass = 0;
        double volume = 0;
        double value = 0;
        double low = 0;
        double high = 0;
        double modelError = 0;
        var thinnest = double.MaxValue;
        double thickest = 0;
        var hydrocarbon = false;
        var liquids = 0;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var w = blend.Components[i].MassFraction;
            if (w <= 0 || material.Viscosity is not { } viscosity || material.Density is not { } density)
            {
                continue;
            }

            var nu = viscosity.Kinematic[index];
            var v = w / density.At(temperature).Value;
            mass += w;
            volume += v;
            value += v * Math.Log(nu.Value);
            low += v * Math.Log(nu.Low);
            high += v * Math.Log(nu.High);
            modelError += v * viscosity.ModelError;
            thinnest = Math.Min(thinnest, nu.Value);
            thickest = Math.Max(thickest, nu.Value);
            hydrocarbon |= material.Ingredient.Kind == Catalogue.IngredientKind.Hydrocarbon;
            liquids++;
        }

        var ratio = thickest / thinnest;
        var rule = liquids < 2 ? 0 : hydrocarbon ? HydrocarbonError : ratio > Unlike ? UnlikeError : RuleError;
        modelError /= volume;

        // Both errors are independent of each other, so they join as squares; the ingredients' range is guaranteed and comes on top.
        var error = Math.Sqrt((modelError * modelError) + (rule * rule));
        var kinematic = new Interval(
            Math.Exp(value / volume), Math.Exp(low / volume) * (1 - error), Math.Exp(high / volume) * (1 + error));
        var rho = mass / volume;
        return new LiquidMix(
            kinematic, new Interval(kinematic.Value * rho, kinematic.Low * rho * (1 - LundDensity.Error), kinematic.High * rho * (1 + LundDensity.Error)), ratio);
    }
}
