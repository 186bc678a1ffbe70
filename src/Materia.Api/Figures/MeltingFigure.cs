using System.Globalization;
using Materia.Formulation;
using Materia.Formulation.Sections;
using ScottPlot;

namespace Materia.Api.Figures;

/// <summary>Solid content against temperature, with its band.</summary>
internal static class MeltingFigure
{
    private const double Room = 20;
    private const double Skin = 32;
    private const double Top = 100;
    private const double Notes = 97;

    // What is clear below this leaves the rest of the axis empty.
    private const double LeastEnd = 50;
    private const double BeyondClear = 10;

    public static FigureKind Kind { get; } = new("melting", "How it melts", ChemistrySections.Melting, Draw, Describe);

    private static Plot? Draw(Evaluation evaluation, string title)
    {
        if (evaluation.Of(ChemistrySections.Melting) is not { SolidContent: { Count: > 0 } points } melting)
        {
            return null;
        }

        var end = Math.Max(LeastEnd, (melting.ClearPoint?.Value ?? points[^1].Temperature) + BeyondClear);
        var shown = points.Where(p => p.Temperature <= end).ToList();
        double[] across = [.. shown.Select(p => p.Temperature)];
        var plot = FigureCanvas.New(title, "Temperature (°C)", "Solid (% of the fats and waxes)");
        var band = plot.Add.FillY(across, [.. shown.Select(p => p.Low)], [.. shown.Select(p => p.High)]);
        band.FillColor = FigureCanvas.Band;
        band.LineWidth = 0;
        var line = plot.Add.ScatterLine(across, [.. shown.Select(p => p.Percent)], FigureCanvas.Ink);
        line.LineWidth = 2.5f;
        FigureCanvas.GuideAt(plot, Room, Notes, "room");
        FigureCanvas.GuideAt(plot, Skin, Notes, "skin");
        plot.Axes.SetLimits(across[0], across[^1], 0, Top);
        TextureKey.Add(plot, melting, end);
        return plot;
    }

    private static string Describe(Evaluation evaluation)
    {
        var melting = evaluation.Of(ChemistrySections.Melting)!;
        var points = melting.SolidContent.Where(p => p.Temperature is 10 or 20 or 25 or 32 or 40)
            .Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Percent:0} % ({p.Low:0} to {p.High:0}) at {p.Temperature:0} °C"));
        return $"Solid content falls with temperature: {string.Join(", ", points)}."
            + (melting.ClearPoint?.Value is { } clear ? string.Create(CultureInfo.InvariantCulture, $" It is clear at about {clear:0} °C.") : "")
            + " The band around the line shows what the figures allow.";
    }
}
