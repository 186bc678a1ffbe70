using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>Works out the viscosity of a melted blend with its powders.</summary>
internal static class FlowSum
{
    /// <summary>The key of the method.</summary>
    public const string Method = "viscosity-log-volume";

    /// <summary>The share of the mass that must have data.</summary>
    public const double LeastCoverage = 0.8;

    /// <summary>Where a melting figure is missing, nothing is given below this temperature [Cel]; natural butters are melted by then.</summary>
    private const double AssumedMelted = 60;

    public static BlendFlow Of(Blend blend)
    {
        var cover = new Cover();
        var warnings = new List<string>();
        var melting = Melting(blend, cover, warnings);
        var refused = new BlendFlow { Method = Method, Coverage = cover.Share, ValidFrom = melting.Known };
        if (cover.Refusal(LeastCoverage, "viscosity (or for a powder a density)", "formula's mass") is { } refusal)
        {
            return refused with { Absent = refusal };
        }

        if (!HasLiquid(blend))
        {
            return refused with { Absent = "There is no liquid with a known viscosity in the formula." };
        }

        if (melting.From > FlowTemperatures.All[^1])
        {
            return refused with { Absent = $"The ingredients' melting figures go up to {Written.Number(melting.From)} °C, so it is not surely melted at 80 °C." };
        }

        var first = 0;
        while (FlowTemperatures.All[first] < melting.From)
        {
            first++;
        }

        var suspension = Suspension.Of(blend, FlowTemperatures.All[first]);
        if (suspension is { IsTooFull: true })
        {
            return refused with
            {
                Absent = $"The powders fill {Written.Percent(suspension.VolumeFraction)} of the volume and jam at about {Written.Percent(suspension.MaximumPacking)}: it is a paste, for which no viscosity can be given.",
                Solids = new SuspendedSolids(Math.Round(suspension.VolumeFraction, 4), Math.Round(suspension.MaximumPacking, 4), null),
            };
        }

        cover.Warn(warnings, "viscosity (or for a powder a density)", "formula's mass");
        FlowWarnings.Add(blend, warnings, suspension, LiquidMix.At(blend, first));
        var thickening = suspension?.RelativeViscosity() ?? Interval.Exact(1);
        var figures = new TemperatureFigure[FlowTemperatures.All.Count - first];
        for (var i = 0; i < figures.Length; i++)
        {
            var liquid = LiquidMix.At(blend, first + i).Dynamic;
            figures[i] = new TemperatureFigure(
                FlowTemperatures.All[first + i],
                Significant(liquid.Value * thickening.Value),
                Significant(liquid.Low * thickening.Low),
                Significant(liquid.High * thickening.High),
                Units.MillipascalSecond);
        }

        return refused with
        {
            Viscosity = figures,
            Solids = suspension is null ? null : new SuspendedSolids(
                Math.Round(suspension.VolumeFraction, 4), Math.Round(suspension.MaximumPacking, 4), Math.Round(thickening.Value, 3)),
            Warnings = warnings,
            Steps = blend.Explain ? FlowSteps.Of(blend, first, suspension) : null,
        };
    }

    /// <summary>Counts the coverage and finds the temperature from which everything is melted.</summary>
    private static (double From, double? Known) Melting(Blend blend, Cover cover, List<string> warnings)
    {
        double? known = null;
        List<string>? unknown = null;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            cover.Add(component, material.Density is not null && (material.IsPowder || material.Viscosity is not null));
            if (component.MassFraction <= 0)
            {
                continue;
            }

            if (material.MeltedFrom is { } limit && (known is null || limit > known))
            {
                known = limit;
            }

            if (material.MeltingIsUnknown)
            {
                (unknown ??= []).Add(component.Name);
            }
        }

        if (unknown is null)
        {
            return (known ?? double.MinValue, known);
        }

        warnings.Add($"No melting figure is held for {Written.List(unknown)}; viscosities are given from {Written.Number(AssumedMelted)} °C up and hold only where it is melted.");
        return (Math.Max(AssumedMelted, known ?? AssumedMelted), known);
    }

    private static bool HasLiquid(Blend blend)
    {
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            if (blend.Components[i].MassFraction > 0 && blend.Materials[i] is { Viscosity: not null, Density: not null })
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Three significant digits: the error is fifteen percent at best.</summary>
    private static double Significant(double value)
    {
        var scale = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return scale >= 1 ? Math.Round(value / scale) * scale : Math.Round(value, (int)Math.Round(-Math.Log10(scale)));
    }
}
