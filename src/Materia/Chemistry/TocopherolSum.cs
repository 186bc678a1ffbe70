using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>Adds up the tocopherols that the ingredients' figures promise.</summary>
internal static class TocopherolSum
{
    /// <summary>The key of the method.</summary>
    public const string Method = "tocopherol-sum";

    private const double Little = 100;

    private const double Most = 2000;

    /// <summary>The least tocopherols of the lipid phase; <see langword="null"/> when no ingredient has a figure.</summary>
    public static ComputedFigure? Of(Blend blend)
    {
        var cover = new Cover();
        double value = 0;
        double low = 0;
        double high = 0;
        var steps = blend.Explain ? new List<UsedFigure>() : null;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            if (!material.IsLipid)
            {
                continue;
            }

            cover.Add(component, material.Tocopherols is not null);
            if (material.Tocopherols is { } figure && component.MassFraction > 0)
            {
                var amount = Interval.Of(figure);
                value += component.MassFraction * amount.Value;
                low += component.MassFraction * amount.Low;
                high += component.MassFraction * amount.High;
                steps?.Add(StoredFigures.Cite(component.Name, figure));
            }
        }

        if (!(cover.Share > 0))
        {
            return null;
        }

        var mass = cover.Concerned;
        var warnings = new List<string>
        {
            "Native tocopherols are lost with refining, light and age; vitamin E does not preserve against microbes and cannot rescue oil that is already rancid.",
        };
        if (cover.Share < 1)
        {
            warnings.Add($"A figure is held for only {Written.Percent(cover.Share)} of the lipid phase; the rest counts as none, so this is the least and the upper end is open.");
        }

        warnings.Add((value / mass) switch
        {
            < Little when cover.Share > 1 - Cover.Annotated => "Below 100 mg/kg there is little protection.",
            > Most => "Above 2000 mg/kg is more than any studied optimum; more does not help and may promote oxidation.",
            _ => "Studied optima lie between 100 and 1000 mg/kg and differ between studies; above 500 mg/kg alpha-tocopherol adds nothing and may harm.",
        });
        return new ComputedFigure
        {
            Value = Math.Round(value / mass, 1),
            Low = Math.Round(low / mass, 1),
            High = cover.Share < 1 ? null : Math.Round(high / mass, 1),
            Unit = Units.MilligramPerKilogram,
            Method = Method,
            Coverage = cover.Share,
            Warnings = warnings,
            Steps = steps is null ? null : [new ExplainedStep { What = "Tocopherols of the lipid phase", Equation = "t = Σ w t_i / Σ w", Arithmetic = $"{Written.Number(value)} / {Written.Number(mass)} = {Written.Number(value / mass)} {Units.MilligramPerKilogram}", Inputs = steps }],
        };
    }
}
