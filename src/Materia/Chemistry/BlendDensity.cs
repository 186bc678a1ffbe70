namespace Materia.Chemistry;

/// <summary>The density of a blend, its fats melted, at several temperatures.</summary>
public sealed record BlendDensity
{
    /// <summary>The temperatures at which it is given [Cel].</summary>
    public static IReadOnlyList<double> Temperatures { get; } = [20, 25, 32, 40, 60, 70];

    /// <summary>The densities [g/mL], by rising temperature; empty when they are absent.</summary>
    public IReadOnlyList<TemperatureFigure> Values { get; init; } = [];

    /// <summary>
    /// The temperature from which every component with a melting figure is melted [Cel]; below it the blend may hold solid fat and the
    /// upper end of the range allows for that. <see langword="null"/> when no component has a melting figure.
    /// </summary>
    public double? MeltedFrom { get; init; }

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public required string Method { get; init; }

    /// <summary>The share of the formula's mass that has a density, 0 to 1.</summary>
    public required double Coverage { get; init; }

    /// <summary>What limits the result.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no value.</summary>
    public string? Absent { get; init; }

    /// <summary>How the result came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }

    /// <summary>
    /// Works out the density of <paramref name="blend"/> at <see cref="Temperatures"/>: the specific volumes of the components add up.
    /// Absent when under 80 % of the mass has a density.
    /// </summary>
    public static BlendDensity Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return DensitySum.Of(blend);
    }
}
