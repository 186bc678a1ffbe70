using System.Globalization;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>Adds up iodine or saponification values over the lipid phase: y = Σ w·y_i / Σ w, exact by definition of the quantity.</summary>
internal static class TitrationBlend
{
    /// <summary>The share of the lipid phase that must have a value.</summary>
    public const double LeastCoverage = 0.5;

    private const int Digits = 2;

    /// <param name="blend">The blend.</param>
    /// <param name="of">Which value of an ingredient is meant.</param>
    /// <param name="method">The method's key.</param>
    /// <param name="what">What the value is called in sentences.</param>
    /// <param name="symbol">Its symbol in equations.</param>
    /// <param name="unit">The UCUM code of its unit.</param>
    public static ComputedFigure Of(Blend blend, Func<Material, Titration?> of, string method, string what, string symbol, string unit)
    {
        var cover = new Cover();
        var warnings = new List<string>();
        double mass = 0;
        double value = 0;
        double low = 0;
        double high = 0;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            if (!material.IsLipid || component.MassFraction <= 0)
            {
                continue;
            }

            var titration = of(material);
            cover.Add(component, titration is not null);
            if (titration is null)
            {
                continue;
            }

            mass += component.MassFraction;
            value += component.MassFraction * titration.Value.Value;
            low += component.MassFraction * titration.Value.Low;
            high += component.MassFraction * titration.Value.High;
            if (titration.Note is { } note)
            {
                warnings.Add($"{component.Name}: {note}.");
            }
        }

        if (cover.Refusal(LeastCoverage, what, "lipid phase") is { } refusal)
        {
            return new ComputedFigure { Unit = unit, Method = method, Coverage = cover.Share, Absent = refusal, Warnings = warnings };
        }

        cover.Warn(warnings, what, "lipid phase");
        if (cover.Concerned < blend.TotalMass * (1 - 1e-9))
        {
            warnings.Add($"The figure is that of the lipid phase, {Written.Percent(cover.Concerned / blend.TotalMass)} of the mass; clays, powders, starches and essential oils are outside it.");
        }

        return new ComputedFigure
        {
            Value = Math.Round(value / mass, Digits),
            Low = Math.Round(low / mass, Digits),
            High = Math.Round(high / mass, Digits),
            Unit = unit,
            Method = method,
            Coverage = cover.Share,
            Warnings = warnings,
            Steps = blend.Explain ? Steps(blend, of, what, symbol, unit, mass, value / mass) : null,
        };
    }

    private static List<ExplainedStep> Steps(Blend blend, Func<Material, Titration?> of, string what, string symbol, string unit, double mass, double result)
    {
        var steps = new List<ExplainedStep>();
        var terms = new List<string>();
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            if (!material.IsLipid || component.MassFraction <= 0 || of(material) is not { } titration)
            {
                continue;
            }

            steps.Add(TitrationSteps.OfComponent(component.Name, material, titration, what, symbol, unit));
            terms.Add($"{Written.Number(component.MassFraction)} × {Written.Number(titration.Value.Value)}");
        }

        steps.Add(new ExplainedStep
        {
            What = string.Create(CultureInfo.InvariantCulture, $"{what} of the lipid phase"),
            Equation = $"{symbol} = Σ w {symbol}_i / Σ w over the lipid phase",
            Arithmetic = $"({string.Join(" + ", terms)}) / {Written.Number(mass)} = {Written.Number(result)} {unit}",
        });
        return steps;
    }
}
