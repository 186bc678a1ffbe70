using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Melting;
using Materia.Formulation.Normalising;
using Materia.Formulation.Optimising;

namespace Materia.Formulation.Designing;

/// <summary>A checked target.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Low">The lower end, minus infinity where open.</param>
/// <param name="High">The upper end, infinity where open.</param>
/// <param name="Weight">How much it matters.</param>
/// <param name="IsValue">Whether one value was asked for.</param>
/// <param name="At">Where it stands in the request.</param>
internal sealed record AimedFigure(BlendFigure Figure, double Low, double High, double Weight, bool IsValue, string At)
{
    /// <summary>The noticeable step; of a price a twentieth of what is asked.</summary>
    public double Step => Figure.Property == BlendProperty.Cost ? Math.Max(0.01, 0.05 * (double.IsFinite(High) ? High : Low)) : Figure.Step;
}

/// <summary>Checks targets.</summary>
internal static class TargetReading
{
    private const int Most = 50;

    /// <summary>The targets; of use only when no fault was added.</summary>
    /// <param name="targets">Those of the request.</param>
    /// <param name="needed">Those that follow from its needs, which contradict none of the request's.</param>
    /// <param name="release">The release.</param>
    /// <param name="faults">Takes the faults.</param>
    public static IReadOnlyList<AimedFigure> Read(IReadOnlyList<DesignTarget> targets, IReadOnlyList<DesignTarget> needed, Release release, FaultList faults)
    {
        if (targets.Count + needed.Count is 0 || targets.Count > Most)
        {
            faults.Add("/targets", $"Give 1 to {Most} targets, such as {{ \"property\": \"solid-content\", \"temperature\": 20, \"low\": 30, \"high\": 45 }}.");
            return [];
        }

        var read = new List<AimedFigure>();
        for (var i = 0; i < targets.Count; i++)
        {
            if (Read(targets[i], $"/targets/{i}", release, faults) is not { } aimed)
            {
                continue;
            }

            if (read.Find(r => r.Figure == aimed.Figure && (r.Low > aimed.High || aimed.Low > r.High)) is { } other)
            {
                faults.Add(aimed.At, $"This asks for another {aimed.Figure.Name} than {other.At}; no value lies in both ranges. Keep one of the two.");
            }

            read.Add(aimed);
        }

        read.AddRange(needed.Select(t => Read(t, "/needs", release, faults)).OfType<AimedFigure>());
        return read;
    }

    private static AimedFigure? Read(DesignTarget target, string at, Release release, FaultList faults)
    {
        var before = faults.Count;
        if (target.Property is not { } property)
        {
            faults.Add($"{at}/property", $"Say what is aimed at: {Fault.Words(KebabCase<BlendProperty>.Words)}.");
            return null;
        }

        CheckTemperature(property, target.Temperature, at, faults);
        if (property == BlendProperty.FattyAcid && (target.Acid is null || release.FindFattyAcid(target.Acid) is null))
        {
            faults.Add($"{at}/acid", "Name the acid by its symbol in the fatty-acid table, such as \"18:1n-9\", or by its chain, such as \"18:1\".");
        }
        else if (property != BlendProperty.FattyAcid && target.Acid is not null)
        {
            faults.Add($"{at}/acid", "An acid goes with the property fatty-acid only. Leave it out.");
        }

        if ((target.Value is null) == (target.Low is null && target.High is null))
        {
            faults.Add(at, "Give a value, or low, high or both, and not value beside them.");
        }

        if (target.Low > target.High)
        {
            faults.Add($"{at}/low", $"The range ends at {Fault.Text(target.High.Value)} and begins at {Fault.Text(target.Low.Value)}. Exchange the two.");
        }

        if (target.Weight is <= 0 or > 100)
        {
            faults.Add($"{at}/weight", "A weight is over 0 and up to 100. To drop a target, leave it out.");
        }

        if (property is BlendProperty.Viscosity or BlendProperty.Density && (target.Value ?? target.Low) is <= 0)
        {
            faults.Add($"{at}/{(target.Value is null ? "low" : "value")}", "This figure is over nought. Correct it.");
        }

        if (faults.Count > before)
        {
            return null;
        }

        var figure = new BlendFigure(property, (double?)target.Temperature, target.Acid);
        return new AimedFigure(
            figure,
            (target.Value ?? target.Low) is { } low ? figure.Felt((double)low) : double.NegativeInfinity,
            (target.Value ?? target.High) is { } high ? figure.Felt((double)high) : double.PositiveInfinity,
            (double)(target.Weight ?? 1),
            target.Value is not null,
            at);
    }

    private static void CheckTemperature(BlendProperty property, decimal? temperature, string at, FaultList faults)
    {
        var pointer = $"{at}/temperature";
        switch (property)
        {
            case BlendProperty.SolidContent or BlendProperty.Viscosity or BlendProperty.Density when temperature is null:
                faults.Add(pointer, "Give the temperature in °C.");
                break;
            case BlendProperty.SolidContent:
                faults.Within(pointer, temperature, SolidContentCurve.From, SolidContentCurve.To, "The temperature [°C]");
                break;
            case BlendProperty.Viscosity when !FlowTemperatures.All.Contains((double)temperature!):
                faults.Add(pointer, $"Viscosity is worked out at {string.Join(", ", FlowTemperatures.All)} °C; choose one of them.");
                break;
            case BlendProperty.Density:
                faults.Within(pointer, temperature, 0, 100, "The temperature [°C]");
                break;
            case not BlendProperty.Viscosity when temperature is not null:
                faults.Add(pointer, "This property has no temperature. Leave it out.");
                break;
        }
    }
}
