namespace Materia.Chemistry;

/// <summary>The density of a blend, its fats melted, at several temperatures.</summary>
public sealed record BlendDensity
{
    /// <summary>The densities [g/mL], by rising temperature; empty when they are absent.</summary>
    public IReadOnlyList<TemperatureFigure> Values { get; init; } = [];

    /// <summary>The temperature from which every component with a melting figure is melted [Cel]; below it the true density is higher.</summary>
    public double? MeltedFrom { get; init; }

    /// <summary>The key of the <see cref="Chemistry.Method"/>.</summary>
    public required string Method { get; init; }

    /// <summary>The share of the formula's mass that has a density, 0 to 1.</summary>
    public required double Coverage { get; init; }

    /// <summary>What limits the result.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no value.</summary>
    public string? Absent { get; init; }

    /// <summary>How the result came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }

    /// <summary>Works out the density of <paramref name="blend"/> at 20, 25, 32, 40, 60 and 70 °C.</summary>
    public static BlendDensity Of(Blend blend) => throw new NotImplementedException();
}
