using System.Globalization;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace Materia.Api.Figures;

/// <summary>
/// Sets ticks and margins of a plot before it is drawn. The plotting library finds both by measuring over and over, which takes most of
/// the time of a drawing; here each label is measured once.
/// </summary>
internal static class FigureLayout
{
    private const int MostTicks = 9;
    private const float Gap = 12;
    private const float LabelHeight = 24;
    private const float Below = 58;
    private const float Above = 44;
    private const float Right = 26;

    private static readonly double[] Steps = [1, 2, 5, 10, 20];

    /// <summary>Settles the plot, whose limits must be set.</summary>
    public static void Settle(Plot plot)
    {
        var limits = plot.Axes.GetLimits();
        var left = TicksOf(plot.Axes.Left, limits.VerticalRange);
        TicksOf(plot.Axes.Bottom, limits.HorizontalRange);
        var size = plot.Axes.Left.TickLabelStyle.FontSize;
        var widest = left.Ticks.Length == 0 ? 0 : left.Ticks.Max(t => FigureFont.Width(FigureFont.Boxed(t.Label), size));
        var named = string.IsNullOrEmpty(plot.Axes.Left.Label.Text) ? 0 : LabelHeight;
        plot.Layout.Fixed(new PixelPadding(widest + named + Gap, Right, Below, Above));
    }

    private static NumericManual TicksOf(IAxis axis, CoordinateRange range)
    {
        if (axis.TickGenerator is NumericManual set)
        {
            Fill(set, axis, range);
            return set;
        }

        var step = Step(range.Length);
        var manual = new NumericManual();
        for (var i = Math.Ceiling(range.Min / step); i * step <= range.Max; i++)
        {
            // Adding nought turns a negative nought, which would be written with its sign, into a plain one.
            manual.AddMajor((i * step) + 0.0, Math.Round((i * step) + 0.0, 6).ToString("0.######", CultureInfo.InvariantCulture));
        }

        axis.TickGenerator = manual;
        Fill(manual, axis, range);
        return manual;
    }

    // The library lists the ticks only once it has been asked for those of a range.
    private static void Fill(NumericManual ticks, IAxis axis, CoordinateRange range)
    {
        using var paint = Paint.NewDisposablePaint();
        ticks.Regenerate(range, axis.Edge, new PixelLength(0), paint, axis.TickLabelStyle);
    }

    /// <summary>The least of 1, 2 and 5 times a power of ten that needs no more than <see cref="MostTicks"/>.</summary>
    private static double Step(double length)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(length / MostTicks)));
        return Steps.Select(m => m * power).First(s => length / s <= MostTicks);
    }
}
