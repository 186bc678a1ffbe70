using Materia.Chemistry;

namespace Materia.Formulation.Sections;

/// <summary>The density of the formula, its fats melted, and of the whipped product where an overrun is given.</summary>
public sealed record FormulaDensity
{
    /// <summary>The section <c>density</c>.</summary>
    public static EvaluationSection<FormulaDensity> Section { get; } =
        new("density", "The density against temperature, and of the whipped product.", Of);

    /// <inheritdoc cref="BlendDensity.Values"/>
    public required IReadOnlyList<TemperatureFigure> Values { get; init; }

    /// <inheritdoc cref="BlendDensity.MeltedFrom"/>
    public double? MeltedFrom { get; init; }

    /// <summary>The whipped product; absent without an overrun or a density.</summary>
    public WhippedProduct? Whipped { get; init; }

    /// <inheritdoc cref="BlendDensity.Method"/>
    public required string Method { get; init; }

    /// <inheritdoc cref="BlendDensity.Coverage"/>
    public required double Coverage { get; init; }

    /// <inheritdoc cref="BlendDensity.Warnings"/>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <inheritdoc cref="BlendDensity.Absent"/>
    public string? Absent { get; init; }

    /// <inheritdoc cref="BlendDensity.Steps"/>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }

    /// <summary>The density of what goes into the jar, at room temperature [g/mL]; <see langword="null"/> when it is absent.</summary>
    internal TemperatureFigure? Filled() => Whipped?.Value ?? AtRoomTemperature(Values);

    private static FormulaDensity Of(EvaluationInput input)
    {
        var density = BlendDensity.Of(input.Blend);
        var whipped = input.Formula.OverrunPercent is { } overrun && AtRoomTemperature(density.Values) is { } unwhipped
            ? WhippedProduct.Of(unwhipped, overrun)
            : null;
        return new FormulaDensity
        {
            Values = density.Values,
            MeltedFrom = density.MeltedFrom,
            Whipped = whipped,
            Method = density.Method,
            Coverage = density.Coverage,
            Warnings = density.Warnings,
            Absent = density.Absent,
            Steps = density.Steps is { } steps && whipped is not null ? [.. steps, whipped.Step()] : density.Steps,
        };
    }

    private static TemperatureFigure? AtRoomTemperature(IReadOnlyList<TemperatureFigure> values) =>
        values.FirstOrDefault(v => v.Temperature is >= 20 and <= 25 && v.Value > 0 && double.IsFinite(v.Value));
}
