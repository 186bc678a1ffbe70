using System.Globalization;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace Materia.Api.Figures;

/// <summary>An amount against what it is held against.</summary>
/// <param name="Label">What it stands for.</param>
/// <param name="Low">The least amount.</param>
/// <param name="High">The greatest amount, which decides.</param>
/// <param name="Bound">The threshold or limit, over nought.</param>
internal sealed record BoundedAmount(string Label, decimal Low, decimal High, decimal Bound)
{
    /// <summary>The greatest amount over the bound.</summary>
    public double Ratio => (double)(High / Bound);
}

/// <summary>Amounts as multiples of their bound on a logarithmic scale, with the bound as a line.</summary>
internal static class ThresholdFigure
{
    private const int Decades = 3;
    private const double Least = 1e-3;

    /// <summary>Draws the highest of them; <see langword="null"/> where there are none.</summary>
    public static Plot? Draw(string title, string across, string bound, IReadOnlyList<BoundedAmount> amounts)
    {
        if (amounts.Count == 0)
        {
            return null;
        }

        var plot = FigureCanvas.New(title, across, "");
        for (var i = 0; i < amounts.Count; i++)
        {
            var amount = amounts[i];
            var (low, high) = (Scale((double)(amount.Low / amount.Bound)), Scale(amount.Ratio));
            var range = plot.Add.Line(low, -i, high, -i);
            range.LineColor = FigureCanvas.Ink;
            range.LineWidth = 4;
            var end = plot.Add.Marker(high, -i, amount.Ratio > 1 ? MarkerShape.FilledDiamond : MarkerShape.FilledCircle, 11, FigureCanvas.Ink);
            end.MarkerLineColor = Colors.Black;
        }

        var most = Math.Max(1, Math.Ceiling(amounts.Max(a => Scale(a.Ratio))));
        FigureCanvas.GuideAt(plot, 0, 0.9, bound);
        double[] marks = [.. Enumerable.Range(-Decades, Decades + (int)most + 1).Select(d => (double)d)];
        plot.Axes.Bottom.TickGenerator = new NumericManual(marks, [.. marks.Select(m => Math.Pow(10, m).ToString("0.###", CultureInfo.InvariantCulture))]);
        plot.Axes.Left.TickGenerator = new NumericManual([.. amounts.Select((_, i) => (double)-i)], [.. amounts.Select(a => FigureCanvas.Safe(a.Label, 34))]);
        plot.Axes.Left.MajorTickStyle.Length = 0;
        plot.Axes.SetLimits(-Decades, most, -amounts.Count + 0.4, 1);
        return plot;
    }

    /// <summary>The amounts in words.</summary>
    public static string Describe(IEnumerable<BoundedAmount> amounts) => string.Join(
        ", ", amounts.Select(a => string.Create(CultureInfo.InvariantCulture, $"{a.Label} {a.High} % against {a.Bound} %"))) + ".";

    /// <summary>Those that are highest against their bound.</summary>
    public static List<BoundedAmount> Highest(IEnumerable<BoundedAmount> amounts) =>
        [.. amounts.Where(a => a is { Bound: > 0, High: > 0 }).OrderByDescending(a => a.Ratio).ThenBy(a => a.Label, StringComparer.Ordinal).Take(BarFigure.Most)];

    private static double Scale(double ratio) => Math.Log10(Math.Max(Least, ratio));
}
