using System.Globalization;
using Materia.Chemistry;
using ScottPlot;

namespace Materia.Api.Figures;

/// <summary>Points on a melting curve, with a key that says how it feels at each; the key stands where the curve leaves room.</summary>
internal static class TextureKey
{
    // At the upper right, below the notes of the guide lines; a fat that is hard in the warmth has its room at the lower left.
    private const double First = 89;
    private const double Line = 5.5;
    private const double Warmth = 30;
    private const double Hard = 60;
    private const float Size = 12;

    /// <summary>Adds both to a plot of solid content that ends at <paramref name="end"/> [Cel].</summary>
    public static void Add(Plot plot, BlendMelting melting, double end)
    {
        var felt = melting.Texture.Where(t => t.Temperature <= end).ToList();
        if (felt.Count == 0)
        {
            return;
        }

        var points = plot.Add.Markers(felt.Select(t => new Coordinates(t.Temperature, t.Percent)).ToArray(), MarkerShape.FilledCircle, 9, FigureCanvas.Ink);
        points.MarkerLineColor = Colors.Black;
        var hard = melting.SolidContent.Any(p => p.Temperature >= Warmth && p.High > Hard);
        for (var row = 0; row < felt.Count; row++)
        {
            var text = plot.Add.Text(
                string.Create(CultureInfo.InvariantCulture, $"{felt[row].Temperature:0} °C: {felt[row].Words}"),
                hard ? melting.SolidContent[0].Temperature + 1 : end - 1,
                hard ? Line * (felt.Count - row) : First - (Line * row));
            text.LabelAlignment = hard ? Alignment.MiddleLeft : Alignment.MiddleRight;
            text.LabelFontName = FigureFont.Family;
            text.LabelFontSize = Size;
        }
    }
}
