using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Emulsions;

/// <summary>Mean HLB of an oil phase and of emulsifiers.</summary>
internal static class HlbSum
{
    /// <summary>Under this share of known mass nothing is given.</summary>
    private const double LeastCoverage = 0.5;

    // Published tables of one oil differ by this much and more.
    private const double Scatter = 1;

    public static ComputedFigure Required(IReadOnlyList<FormulaPart> oils, Property property, bool explain) =>
        Mean(oils, p => StoredFigures.Find(p.Ingredient!, property), Scatter, explain,
            property == Property.RequiredHlb ? "HLB required for oil in water" : "HLB required for water in oil", "oil phase", "figure");

    public static ComputedFigure Offered(IReadOnlyList<FormulaPart> emulsifiers, bool explain) =>
        Mean(emulsifiers, p => EmulsionParts.IsDescribed(p.Ingredient!) ? StoredFigures.Find(p.Ingredient!, Property.Hlb) : null, 0, explain, "HLB offered", "emulsifiers", "HLB that describes it");

    private static ComputedFigure Mean(
        IReadOnlyList<FormulaPart> parts, Func<FormulaPart, Figure?> figureOf, double scatter, bool explain, string what, string of, string lacks)
    {
        var known = parts.Select(p => (Part: p, Figure: figureOf(p))).Where(p => p.Figure is not null).ToList();
        var total = parts.Sum(p => (double)p.Share.Typical);
        var mass = known.Sum(p => (double)p.Part.Share.Typical);
        var figure = new ComputedFigure { Unit = Units.One, Method = Emulsion.MethodKey, Coverage = total > 0 ? Math.Round(mass / total, 6) : 0 };
        var missing = parts.Where(p => figureOf(p) is null).Select(p => p.Part.Name).Distinct(StringComparer.Ordinal).ToList();
        if (total == 0 || figure.Coverage < LeastCoverage)
        {
            return figure with
            {
                Absent = total == 0 ? $"Nothing in the formula belongs to the {of}."
                    : $"Only {Written.Percent(figure.Coverage)} of the {of} has a known {lacks}, and half is needed; none is held for {Written.List(missing)}.",
            };
        }

        double Of(Func<Figure, decimal> end) => HlbBlend.Mean(known.Select(k => ((double)k.Part.Share.Typical, (double)end(k.Figure!))));
        var value = Of(f => f.Central());
        return figure with
        {
            Value = Math.Round(value, 4),
            Low = Math.Round(Of(f => f.Least()) - scatter, 4),
            High = Math.Round(Of(f => f.Greatest()) + scatter, 4),
            Warnings = missing.Count == 0 ? [] : [$"{(figure.Coverage < 1 - Cover.Annotated ? "Incomplete: no" : "No")} {lacks} is held for {Written.List(missing)} ({Written.Percent(1 - figure.Coverage)} of the {of}); the mean is that of the rest."],
            Steps = explain ? [Step(what, [.. known.Select(k => (k.Part, k.Figure!))], value)] : null,
        };
    }

    private static ExplainedStep Step(string what, IReadOnlyList<(FormulaPart Part, Figure Figure)> known, double value) => new()
    {
        What = what,
        Equation = "Σ w HLB / Σ w",
        Arithmetic = $"({string.Join(" + ", known.Select(k => $"{Written.Number((double)k.Part.Share.Typical)} × {Written.Number((double)k.Figure.Central())}"))}) / {Written.Number(known.Sum(k => (double)k.Part.Share.Typical))} = {Written.Number(value)}",
        Inputs = [.. known.Select(k => StoredFigures.Cite(k.Part.Component, k.Figure))],
    };
}
