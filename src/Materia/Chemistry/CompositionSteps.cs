using System.Globalization;

namespace Materia.Chemistry;

/// <summary>The steps of a fatty-acid composition.</summary>
internal static class CompositionSteps
{
    public static IReadOnlyList<ExplainedStep> Of(Blend blend, double acidMass)
    {
        var steps = new List<ExplainedStep>();
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            if (material.AcidMass <= 0 || component.MassFraction <= 0)
            {
                continue;
            }

            var inputs = material.Acids!.Stored.Shares.Select(s => Materials.StoredFigures.Cite(component.Name, s)).ToList();
            if (material.UnsaponifiableFigure is { } unsaponifiable)
            {
                inputs.Add(Materials.StoredFigures.Cite(component.Name, unsaponifiable));
            }

            steps.Add(new ExplainedStep
            {
                What = $"Weight of the acids of {component.Name}",
                Equation = "weight = w f / Σ w f, f the fatty acids in one gram",
                Arithmetic = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Written.Number(component.MassFraction)} × {Written.Number(material.AcidMass)} / {Written.Number(acidMass)} = {Written.Number(component.MassFraction * material.AcidMass / acidMass)}"),
                Inputs = inputs,
            });
        }

        steps.Add(new ExplainedStep
        {
            What = "Share of each acid in the blend",
            Equation = "p = Σ weight × p_i",
            Arithmetic = "each row is the sum of the components' shares (brought to 100 %) times their weights",
        });
        return steps;
    }
}
