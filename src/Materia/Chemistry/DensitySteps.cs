using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>The steps of a blend's density, shown at one temperature; the others differ by the slopes alone.</summary>
internal static class DensitySteps
{
    public static IReadOnlyList<ExplainedStep> Of(Blend blend, double temperature)
    {
        var steps = new List<ExplainedStep>();
        var terms = new List<string>();
        double mass = 0;
        double volume = 0;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var component = blend.Components[i];
            if (component.MassFraction <= 0 || blend.Materials[i].Density is not { } density)
            {
                continue;
            }

            var rho = density.At(temperature).Value;
            mass += component.MassFraction;
            volume += component.MassFraction / rho;
            terms.Add($"{Written.Number(component.MassFraction)}/{Written.Number(rho)}");
            steps.Add(OfComponent(component.Name, blend.Materials[i], density, temperature));
        }

        steps.Add(new ExplainedStep
        {
            What = $"Density of the melted blend at {Written.Number(temperature)} Cel",
            Equation = "ρ = Σ w / Σ (w_i/ρ_i)",
            Arithmetic = $"{Written.Number(mass)} / ({string.Join(" + ", terms)}) = {Written.Number(mass / volume)} {Units.GramPerMillilitre}",
        });
        return steps;
    }

    private static ExplainedStep OfComponent(string name, Material material, LinearDensity density, double temperature)
    {
        var t = Written.Number(temperature);
        var rho = Written.Number(density.At(temperature).Value);
        if (density.Basis == DensityBasis.Lund)
        {
            var hydroxy = material.Acids!.HydroxyFraction;
            return new ExplainedStep
            {
                What = $"Density of {name} at {t} Cel from its saponification and iodine value",
                Equation = "ρ = (999.1 (0.8475 + 3.0e-4 SV + 1.4e-4 IV + 0.057 x) − 0.66 (T − 15)) / 1000, x the mole fraction of hydroxy acids",
                Arithmetic = $"(999.1 (0.8475 + 3.0e-4 × {Written.Number(material.Saponification!.Value.Value)} + 1.4e-4 × {Written.Number(material.Iodine!.Value.Value)} + 0.057 × {Written.Number(hydroxy)}) − 0.66 ({t} − 15)) / 1000 = {rho} {Units.GramPerMillilitre}",
                Inputs = [.. material.Acids.Stored.Shares.Select(s => StoredFigures.Cite(name, s))],
            };
        }

        var reference = Written.Number(density.Reference.Value);
        return new ExplainedStep
        {
            What = density.Basis == DensityBasis.MeasuredSolid
                ? $"Density of {name} melted at {t} Cel, from that of the solid over {Written.Number(DensityOfMaterial.SolidToLiquid)}"
                : $"Density of {name} at {t} Cel from its stored figure",
            Equation = "ρ = ρ_ref − s (T − T_ref)",
            Arithmetic = $"{reference} − {Written.Number(density.Slope)} ({t} − {Written.Number(density.Temperature)}) = {rho} {Units.GramPerMillilitre}",
            Inputs = [StoredFigures.Cite(name, density.Stored!)],
        };
    }
}
