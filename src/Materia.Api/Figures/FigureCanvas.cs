using Materia.Api.Documents;
using ScottPlot;

namespace Materia.Api.Figures;

/// <summary>
/// How figures look: dark lines on white, told apart by shape and label rather than by colour, so that they can be read in grey and in
/// print; and how they are written out.
/// </summary>
internal static class FigureCanvas
{
    /// <summary>The width [px].</summary>
    public const int Width = 720;

    /// <summary>The height [px].</summary>
    public const int Height = 440;

    /// <summary>The colour of lines and bars.</summary>
    public static readonly Color Ink = Color.FromHex("#24515c");

    /// <summary>The colour of bands and ranges.</summary>
    public static readonly Color Band = Color.FromHex("#24515c").WithAlpha(0.22);

    /// <summary>The colour of guide lines and notes.</summary>
    public static readonly Color Guide = Color.FromHex("#5c4a32");

    private const float TextSize = 14;

    static FigureCanvas() => FigureFont.Register();

    /// <summary>An empty plot with its labels.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="across">The label of the axis across, with its unit.</param>
    /// <param name="up">The label of the axis upwards, with its unit.</param>
    public static Plot New(string title, string across, string up)
    {
        var plot = new Plot();
        plot.Font.Set(FigureFont.Family);
        plot.Title(title, 17);
        plot.XLabel(across, TextSize);
        plot.YLabel(up, TextSize);
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.1);
        plot.Axes.Bottom.TickLabelStyle.FontSize = TextSize - 1;
        plot.Axes.Left.TickLabelStyle.FontSize = TextSize - 1;
        return plot;
    }

    /// <summary>A dashed line at a value of the axis across, with a note at its top.</summary>
    public static void GuideAt(Plot plot, double across, double top, string note)
    {
        plot.Add.VerticalLine(across, 1, Guide, LinePattern.Dashed);
        var text = plot.Add.Text(note, across, top);
        text.LabelFontColor = Guide;
        text.LabelFontSize = TextSize - 2;
        text.LabelFontName = FigureFont.Family;
        text.OffsetX = 4;
    }

    /// <summary>The plot as an SVG document with a name and a description for those who do not see it; the same bytes each time.</summary>
    public static string ToSvg(Plot plot, string name, string title, string description)
    {
        var words = Prepare(plot);
        return SvgDrawing.Finish(plot.GetSvgXml(Width, Height), name, title, description, words);
    }

    /// <summary>The plot as a PNG, twice as fine as its size for print.</summary>
    public static byte[] ToPng(Plot plot)
    {
        Prepare(plot);
        plot.ScaleFactor = 2;
        return plot.GetImageBytes(2 * Width, 2 * Height, ImageFormat.Png);
    }

    /// <summary>A text of somebody's as it can stand in a figure, shortened to <paramref name="most"/> characters.</summary>
    public static string Safe(string text, int most)
    {
        var single = PaperText.OneLine(text);
        if (single.Length <= most)
        {
            return single;
        }

        // Half a character, as a cut inside a pair of surrogates would leave, can stand in no document.
        var kept = char.IsHighSurrogate(single[most - 2]) ? most - 2 : most - 1;
        return string.Concat(single.AsSpan(0, kept).TrimEnd(), "…");
    }

    private static FigureWords Prepare(Plot plot)
    {
        FigureLayout.Settle(plot);
        return FigureWords.Box(plot);
    }
}
