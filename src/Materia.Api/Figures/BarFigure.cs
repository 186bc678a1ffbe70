using System.Globalization;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace Materia.Api.Figures;

/// <summary>A bar with what it may reach to.</summary>
/// <param name="Label">What it stands for.</param>
/// <param name="Value">Its length.</param>
/// <param name="Low">The lower end of its range.</param>
/// <param name="High">The upper end of its range.</param>
internal sealed record RangedBar(string Label, double Value, double Low, double High);

/// <summary>Horizontal bars with ranges, the first at the top; long names stay readable.</summary>
internal static class BarFigure
{
    /// <summary>As many as can be read on one figure.</summary>
    public const int Most = 12;

    private const int LongestLabel = 34;
    private const double Thickness = 0.62;

    /// <summary>Draws them; <see langword="null"/> where there are none.</summary>
    public static Plot? Draw(string title, string across, IReadOnlyList<RangedBar> bars)
    {
        if (bars.Count == 0)
        {
            return null;
        }

        var plot = FigureCanvas.New(title, across, "");
        for (var i = 0; i < bars.Count; i++)
        {
            var (bar, at) = (bars[i], -i);
            plot.Add.Bar(new Bar
            {
                Position = at,
                Value = bar.Value,
                Size = Thickness,
                Orientation = Orientation.Horizontal,
                FillColor = FigureCanvas.Ink.WithAlpha(0.75),
                LineWidth = 0,
            });
            if (bar.High > bar.Low)
            {
                var range = plot.Add.Line(bar.Low, at, bar.High, at);
                range.LineColor = Colors.Black;
                range.LineWidth = 1.6f;
                range.MarkerShape = MarkerShape.VerticalBar;
                range.MarkerSize = 9;
                range.MarkerLineColor = Colors.Black;
            }
        }

        plot.Axes.Left.TickGenerator = new NumericManual([.. bars.Select((_, i) => (double)-i)], [.. bars.Select(b => FigureCanvas.Safe(b.Label, LongestLabel))]);
        plot.Axes.Left.MajorTickStyle.Length = 0;
        plot.Grid.YAxisStyle.IsVisible = false;
        plot.Axes.SetLimits(0, 1.06 * bars.Max(b => Math.Max(b.High, b.Value)), -bars.Count + 0.4, 0.6);
        return plot;
    }

    /// <summary>The bars in words.</summary>
    public static string Describe(IEnumerable<RangedBar> bars, string unit) => string.Join(
        ", ", bars.Select(b => string.Create(CultureInfo.InvariantCulture, $"{b.Label} {b.Value:0.##} {unit}{(b.High > b.Low ? string.Create(CultureInfo.InvariantCulture, $" ({b.Low:0.##} to {b.High:0.##})") : "")}"))) + ".";
}
