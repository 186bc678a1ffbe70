using System.Globalization;
using Materia.Formulation;
using Materia.Formulation.Sections;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace Materia.Api.Figures;

/// <summary>Viscosity against temperature while the fats are melted, on a logarithmic scale, with its band.</summary>
internal static class FlowFigure
{
    private static readonly double[] Marks = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000];

    public static FigureKind Kind { get; } = new("flow", "How it flows when melted", ChemistrySections.Flow, Draw, Describe);

    private static Plot? Draw(Evaluation evaluation, string title)
    {
        // One point is no curve.
        if (evaluation.Of(ChemistrySections.Flow) is not { Viscosity: { Count: > 1 } points })
        {
            return null;
        }

        double[] across = [.. points.Select(p => p.Temperature)];
        var plot = FigureCanvas.New(title, "Temperature (°C)", "Viscosity (mPa·s)");
        var band = plot.Add.FillY(across, [.. points.Select(p => Math.Log10(p.Low))], [.. points.Select(p => Math.Log10(p.High))]);
        band.FillColor = FigureCanvas.Band;
        band.LineWidth = 0;
        var line = plot.Add.Scatter(across, [.. points.Select(p => Math.Log10(p.Value))], FigureCanvas.Ink);
        line.LineWidth = 2.5f;
        line.MarkerSize = 6;
        var (low, high) = (points.Min(p => p.Low) / 1.3, points.Max(p => p.High) * 1.3);
        double[] marks = [.. Marks.Where(m => m >= low && m <= high)];
        plot.Axes.Left.TickGenerator = new NumericManual([.. marks.Select(Math.Log10)], [.. marks.Select(m => m.ToString("0", CultureInfo.InvariantCulture))]);
        plot.Axes.SetLimits(across[0] - 1, across[^1] + 1, Math.Log10(low), Math.Log10(high));
        return plot;
    }

    private static string Describe(Evaluation evaluation) =>
        "Viscosity falls with temperature: "
        + string.Join(", ", evaluation.Of(ChemistrySections.Flow)!.Viscosity.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Value:G3} mPa·s ({p.Low:G3} to {p.High:G3}) at {p.Temperature:0} °C")))
        + ".";
}
