namespace Materia.Formulation.Optimising;

/// <summary>An output of a blend that should lie in a range, with the cost of each unit outside.</summary>
/// <param name="Output">Which output: the figures, then what each rests on, then the share of each material; see <see cref="Objective"/>.</param>
/// <param name="Low">The lower end of the range.</param>
/// <param name="High">The upper end of the range.</param>
/// <param name="Cost">The cost of one unit outside.</param>
/// <param name="Missing">The cost when the figure cannot be given.</param>
/// <param name="IsDistance">Whether it belongs to the distance, rather than steering the search alone.</param>
internal readonly record struct Goal(int Output, double Low, double High, double Cost, double Missing = 0, bool IsDistance = true)
{
    /// <summary>The cost of <paramref name="value"/>.</summary>
    public double Of(double value) => double.IsNaN(value) ? Missing : Cost * Math.Max(0, Math.Max(Low - value, value - High));
}
