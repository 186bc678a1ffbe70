using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>Adds up specific volumes: 1/ρ = Σ w_i/ρ_i / Σ w_i.</summary>
internal static class DensitySum
{
    /// <summary>The key of the method.</summary>
    public const string Method = "density-additive-volumes";

    /// <summary>The share of the mass that must have a density.</summary>
    public const double LeastCoverage = 0.8;

    /// <summary>The error of adding volumes of liquids, as a share of the density.</summary>
    private const double LiquidError = 0.005;

    /// <summary>The same with powders, whose true densities vary and which hold air.</summary>
    private const double PowderError = 0.05;

    private const int Digits = 4;

    public static BlendDensity Of(Blend blend)
    {
        var cover = new Cover();
        var warnings = new List<string>();
        double? meltedFrom = null;
        List<string>? unknownMelting = null;
        var powders = false;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            cover.Add(component, material.Density is not null);
            if (component.MassFraction <= 0)
            {
                continue;
            }

            powders |= material.IsPowder;
            if (material.MeltedFrom is { } limit && (meltedFrom is null || limit > meltedFrom))
            {
                meltedFrom = limit;
            }

            if (material.MeltingIsUnknown)
            {
                (unknownMelting ??= []).Add(component.Name);
            }
        }

        if (cover.Refusal(LeastCoverage, "density", "formula's mass") is { } refusal)
        {
            return new BlendDensity { Method = Method, Coverage = cover.Share, MeltedFrom = meltedFrom, Absent = refusal };
        }

        cover.Warn(warnings, "density", "formula's mass");
        if (meltedFrom > BlendDensity.Temperatures[0])
        {
            warnings.Add($"The figures are those of the melted blend; below {Written.Number(meltedFrom.Value)} °C it may hold solid fat, which is up to about 9 % denser, and the upper end allows for that.");
        }

        if (unknownMelting is not null)
        {
            warnings.Add($"No melting figure is held for {Written.List(unknownMelting)}; where it is solid the blend is denser than given.");
        }

        if (powders)
        {
            warnings.Add("With powders the density is given ±5 %: their true densities vary, and they carry air in.");
        }

        var values = new TemperatureFigure[BlendDensity.Temperatures.Count];
        for (var t = 0; t < values.Length; t++)
        {
            values[t] = At(blend, BlendDensity.Temperatures[t], powders ? PowderError : LiquidError);
        }

        return new BlendDensity
        {
            Values = values,
            MeltedFrom = meltedFrom,
            Method = Method,
            Coverage = cover.Share,
            Warnings = warnings,
            Steps = blend.Explain ? DensitySteps.Of(blend, BlendDensity.Temperatures[0]) : null,
        };
    }

    private static TemperatureFigure At(Blend blend, double temperature, double error)
    {
        double mass = 0;
        double volume = 0;
        double largest = 0;
        double smallest = 0;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            if (material.Density is not { } density)
            {
                continue;
            }

            var w = blend.Components[i].MassFraction;
            var rho = density.At(temperature);
            var solid = material.MeltedFrom > temperature ? DensityOfMaterial.SolidToLiquid : 1;
            mass += w;
            volume += w / rho.Value;
            largest += w / rho.Low;
            smallest += w / (rho.High * solid);
        }

        var value = mass / volume;
        var low = Math.Min(mass / largest, value * (1 - error));
        var high = Math.Max(mass / smallest, value * (1 + error));
        return new TemperatureFigure(temperature, Math.Round(value, Digits), Math.Round(low, Digits), Math.Round(high, Digits), Units.GramPerMillilitre);
    }
}
