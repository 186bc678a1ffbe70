using Materia.Catalogue;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry;

/// <summary>
/// The saponification value of a blend's lipid phase: the mass of potassium hydroxide that saponifies and neutralises it [mg/g]. Given for
/// one gram of the lipid phase (butters, oils, waxes, fatty alcohols and acids, esters, hydrocarbons); clays, powders, starches and
/// essential oils are outside it.
/// </summary>
public static class SaponificationValue
{
    /// <summary>The key of the method.</summary>
    public const string Method = "saponification-value";

    /// <summary>The key of the method of <see cref="InSodiumHydroxide"/>.</summary>
    public const string SodiumHydroxideMethod = "sodium-hydroxide-demand";

    /// <summary>
    /// Works out the saponification value: SV = Σ w·SV_i / Σ w. Each ingredient's own comes from its fatty acids where that is valid,
    /// else from a stored measurement. Absent when under half of the lipid phase has one.
    /// </summary>
    public static ComputedFigure Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return TitrationBlend.Of(blend, static m => m.Saponification, Method, "saponification value", "SV", Units.MilligramPerGram);
    }

    /// <summary>
    /// The same demand in pure sodium hydroxide: 39.997/56.106 of the potassium hydroxide [mg/g]. Divide by the reagent's assay before
    /// weighing, and never plan a soap without a discount for the range.
    /// </summary>
    /// <param name="saponificationValue">A result of <see cref="Of"/>.</param>
    public static ComputedFigure InSodiumHydroxide(ComputedFigure saponificationValue)
    {
        ArgumentNullException.ThrowIfNull(saponificationValue);
        return saponificationValue with
        {
            Value = Converted(saponificationValue.Value),
            Low = Converted(saponificationValue.Low),
            High = Converted(saponificationValue.High),
            Method = SodiumHydroxideMethod,
            Steps = null,
        };
    }

    private static double? Converted(double? value) =>
        value is { } v ? Math.Round(v * SaponificationEquivalent.SodiumHydroxideRatio, 2) : null;
}
