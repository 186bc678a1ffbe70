using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>The steps of the oxidisability index.</summary>
internal static class OxidationSteps
{
    public static IReadOnlyList<ExplainedStep> Of(Blend blend, double acidMass, double total)
    {
        var steps = new List<ExplainedStep>();
        var terms = new List<string>();
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            var weight = component.MassFraction * material.AcidMass / acidMass;
            if (!(weight > 0))
            {
                continue;
            }

            double one = 0;
            double two = 0;
            double three = 0;
            var acids = material.Acids!;
            for (var k = 0; k < acids.Acids.Length; k++)
            {
                var percent = 100 * acids.Shares[k];
                one += acids.Acids[k].DoubleBonds == 1 ? percent : 0;
                two += acids.Acids[k].DoubleBonds == 2 ? percent : 0;
                three += acids.Acids[k].DoubleBonds > 2 ? percent : 0;
            }

            terms.Add($"{Written.Number(weight)} × {Written.Number(acids.CoxValue)}");
            steps.Add(new ExplainedStep
            {
                What = $"Index of {component.Name}",
                Equation = "Cox = (1 mono + 10.3 di + 21.6 tri) / 100",
                Arithmetic = $"({Written.Number(one)} + 10.3 × {Written.Number(two)} + 21.6 × {Written.Number(three)}) / 100 = {Written.Number(acids.CoxValue)}",
                Inputs = [.. acids.Stored.Shares.Select(s => StoredFigures.Cite(component.Name, s))],
            });
        }

        steps.Add(new ExplainedStep
        {
            What = "Index of the blend",
            Equation = "Cox = Σ weight × Cox_i, weight the share of all fatty acids",
            Arithmetic = $"{string.Join(" + ", terms)} = {Written.Number(total)} {Units.One}",
        });
        return steps;
    }
}
