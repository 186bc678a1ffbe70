using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>The steps of a blend's viscosity, shown at the lowest temperature given.</summary>
internal static class FlowSteps
{
    public static IReadOnlyList<ExplainedStep> Of(Blend blend, int index, Suspension? suspension)
    {
        var temperature = FlowTemperatures.All[index];
        var t = Written.Number(temperature);
        var steps = new List<ExplainedStep>();
        var terms = new List<string>();
        double volume = 0;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            volume += IsLiquid(blend, i) ? blend.Components[i].MassFraction / blend.Materials[i].Density!.At(temperature).Value : 0;
        }

        for (var i = 0; i < blend.Materials.Length; i++)
        {
            if (!IsLiquid(blend, i))
            {
                continue;
            }

            var component = blend.Components[i];
            var material = blend.Materials[i];
            var share = component.MassFraction / material.Density!.At(temperature).Value / volume;
            var nu = material.Viscosity!.Kinematic[index].Value;
            terms.Add($"{Written.Number(share)} ln {Written.Number(nu)}");
            steps.Add(OfComponent(component.Name, material, temperature, nu));
        }

        var mix = LiquidMix.At(blend, index);
        steps.Add(new ExplainedStep
        {
            What = $"Viscosity of the liquids at {t} Cel",
            Equation = "ln ν = Σ φ ln ν_i, η = ν ρ",
            Arithmetic = $"exp({string.Join(" + ", terms)}) = {Written.Number(mix.Kinematic.Value)} {Units.SquareMillimetrePerSecond}, η = {Written.Number(mix.Dynamic.Value)} {Units.MillipascalSecond}",
        });
        if (suspension is not null)
        {
            var relative = suspension.RelativeViscosity().Value;
            steps.Add(new ExplainedStep
            {
                What = "Thickening by the powders",
                Equation = "η_r = (1 − φ/φm)⁻²",
                Arithmetic = $"(1 − {Written.Number(suspension.VolumeFraction)}/{Written.Number(suspension.MaximumPacking)})⁻² = {Written.Number(relative)}; η = {Written.Number(mix.Dynamic.Value * relative)} {Units.MillipascalSecond}",
                Inputs = [.. Powders(blend)],
            });
        }

        return steps;
    }

    private static bool IsLiquid(Blend blend, int i) =>
        blend.Components[i].MassFraction > 0 && blend.Materials[i] is { Viscosity: not null, Density: not null };

    private static ExplainedStep OfComponent(string name, Material material, double temperature, double nu)
    {
        var t = Written.Number(temperature);
        var result = $"ν = {Written.Number(nu)} {Units.SquareMillimetrePerSecond}";
        if (material.Viscosity!.Basis == ViscosityBasis.Measured)
        {
            return new ExplainedStep
            {
                What = $"Viscosity of {name} at {t} Cel from a measured one",
                Equation = "W(T) = W(T_ref) − 3.1 log₁₀(T/T_ref), W = log₁₀ log₁₀(ν + 0.7)",
                Arithmetic = result,
                Inputs = [StoredFigures.Cite(name, material.Viscosity.Stored!)],
            };
        }

        var oil = material.Viscosity.Basis == ViscosityBasis.Oil ? OilViscosity.Table[material.Ingredient.Id] : null;
        if (oil is not null && (material.Acids is null || material.IsWaxEster || (temperature >= oil.From && temperature <= oil.To)))
        {
            return new ExplainedStep
            {
                What = $"Viscosity of {name} at {t} Cel from that oil's own coefficients",
                Equation = "W = A − B log₁₀(T/313.15), W = log₁₀ log₁₀(ν + 0.7)",
                Arithmetic = $"W = {Written.Number(oil.A)} − {Written.Number(oil.B)} log₁₀({Written.Number(temperature + 273.15)}/313.15), {result}",
                Inputs = [new UsedFigure(name, $"fit of {Written.Number(oil.Points)} measured viscosities", oil.A, Units.One, KebabCase<Evidence>.Word(oil.Evidence), oil.Source, null)],
            };
        }

        var acids = material.Acids!;
        return new ExplainedStep
        {
            What = $"Viscosity of {name} at {t} Cel from its fatty acids",
            Equation = "W = 0.24400 + 0.01350 (C − 18) − 0.03910 D + 0.19676 H − u (1.27023 + 0.25612 H − 0.02385 (C − 18)), u = ln(T/313.15)",
            Arithmetic = $"C = {Written.Number(acids.MeanCarbons)}, D = {Written.Number(acids.MeanDoubleBonds)}, H = {Written.Number(acids.MeanHydroxyls)}, T = {Written.Number(temperature + 273.15)} K, {result}",
            Inputs = [.. acids.Stored.Shares.Select(s => StoredFigures.Cite(name, s))],
        };
    }

    private static IEnumerable<UsedFigure> Powders(Blend blend)
    {
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            if (!material.IsPowder || blend.Components[i].MassFraction <= 0)
            {
                continue;
            }

            if (material.Density?.Stored is { } density)
            {
                yield return StoredFigures.Cite(blend.Components[i].Name, density);
            }

            if (material.OilAbsorption is { } absorption)
            {
                yield return StoredFigures.Cite(blend.Components[i].Name, absorption);
            }
        }
    }
}
