using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>A value with the range it may lie in.</summary>
/// <param name="Value">The value.</param>
/// <param name="Low">The lower end, not above the value.</param>
/// <param name="High">The upper end, not below the value.</param>
internal readonly record struct Interval(double Value, double Low, double High)
{
    /// <summary>A value known exactly.</summary>
    public static Interval Exact(double value) => new(value, value, value);

    /// <summary>
    /// The value and range of a stored figure. A bare upper limit ("not more than 2") of a quantity that cannot be negative stands for
    /// the middle between nought and itself.
    /// </summary>
    public static Interval Of(Figure figure)
    {
        if (figure is { Low: null, Typical: null, High: { } limit })
        {
            return new((double)limit / 2, 0, (double)limit);
        }

        return new((double)figure.Central(), (double)figure.Least(), (double)figure.Greatest());
    }

    /// <summary>The value and range of a stored figure; one of a single sample is widened by <paramref name="error"/>, because another sample differs by as much, but not below nought.</summary>
    public static Interval Of(Figure figure, double error)
    {
        var interval = Of(figure);
        return interval.Low < interval.High ? interval : new(interval.Value, Math.Max(0, interval.Low - error), interval.High + error);
    }

    /// <summary>The same value, its range wide enough to reach both ends.</summary>
    public Interval Reaching(double low, double high) => new(Value, Math.Min(Low, low), Math.Max(High, high));

    /// <summary>The range widened by <paramref name="error"/> on both sides.</summary>
    public Interval Widened(double error) => new(Value, Low - error, High + error);
}
