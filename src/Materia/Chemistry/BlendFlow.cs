namespace Materia.Chemistry;

/// <summary>How a blend flows while its fats are melted: its viscosity against temperature, powders included.</summary>
public sealed record BlendFlow
{
    /// <summary>The dynamic viscosities [mPa.s], by rising temperature, none below <see cref="ValidFrom"/>; empty when they are absent.</summary>
    public IReadOnlyList<TemperatureFigure> Viscosity { get; init; } = [];

    /// <summary>
    /// The temperature from which the fats are melted, as the ingredients' melting figures say [Cel]; no viscosity is given below it.
    /// <see langword="null"/> when no ingredient has a melting figure.
    /// </summary>
    public double? ValidFrom { get; init; }

    /// <summary>The powders in it, at the lowest temperature given; <see langword="null"/> when there are none.</summary>
    public SuspendedSolids? Solids { get; init; }

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public required string Method { get; init; }

    /// <summary>The share of the formula's mass that has a viscosity, or for powders a density, 0 to 1.</summary>
    public required double Coverage { get; init; }

    /// <summary>What limits the result.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no value.</summary>
    public string? Absent { get; init; }

    /// <summary>How the result came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }

    /// <summary>
    /// Works out the viscosity of <paramref name="blend"/> at 20, 25, 32, 40, 50, 60, 70 and 80 °C, as far as it is melted. Absent when
    /// under 80 % of the mass has data, when it is not surely melted at 80 °C, or when powders fill more than 0.9 of the room they can.
    /// </summary>
    public static BlendFlow Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return FlowSum.Of(blend);
    }
}

/// <summary>Powders suspended in the melted fats.</summary>
/// <param name="VolumeFraction">Their share of the volume, from true densities, 0 to 1.</param>
/// <param name="MaximumPacking">The share of the volume at which they would jam, 0 to 1.</param>
/// <param name="RelativeViscosity">How many times they thicken the liquid; <see langword="null"/> where no figure may be given.</param>
public sealed record SuspendedSolids(double VolumeFraction, double MaximumPacking, double? RelativeViscosity);
