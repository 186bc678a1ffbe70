namespace Materia.Chemistry.Preserving;

/// <summary>The pH of a product with the range it may lie in.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="Value">The value, or the middle of the range.</param>
/// <param name="High">The upper end.</param>
public sealed record PhRange(decimal Low, decimal Value, decimal High)
{
    /// <summary>The error of a test strip [pH]; a meter keeps to 0.05.</summary>
    public const decimal StripError = 0.2m;

    /// <summary>A range from what was measured: a value, or both ends.</summary>
    public static PhRange Of(decimal? value, decimal? low, decimal? high) => value is { } v
        ? new PhRange(Math.Max(0, v - StripError), v, Math.Min(14, v + StripError))
        : new PhRange(low ?? high ?? 7, ((low ?? high ?? 7) + (high ?? low ?? 7)) / 2, high ?? low ?? 7);
}
