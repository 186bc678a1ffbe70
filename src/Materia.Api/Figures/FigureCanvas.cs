using System.Xml.Linq;
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

    // What viewers without it fall back on is about as wide.
    private const string Family = "DejaVu Sans";
    private const string WrittenFamily = "DejaVu Sans, Verdana, sans-serif";
    private const float TextSize = 14;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>An empty plot with its labels.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="across">The label of the axis across, with its unit.</param>
    /// <param name="up">The label of the axis upwards, with its unit.</param>
    public static Plot New(string title, string across, string up)
    {
        var plot = new Plot();
        plot.Font.Set(Family);
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
        text.LabelFontName = Family;
        text.OffsetX = 4;
    }

    /// <summary>The plot as an SVG document with a name and a description for those who do not see it.</summary>
    /// <param name="plot">The plot.</param>
    /// <param name="name">The figure's word, which makes ids unique among the figures of one page.</param>
    /// <param name="title">The name.</param>
    /// <param name="description">The description.</param>
    public static string ToSvg(Plot plot, string name, string title, string description)
    {
        var document = XDocument.Parse(plot.GetSvgXml(Width, Height));
        var root = document.Root!;
        root.SetAttributeValue("viewBox", FormattableString.Invariant($"0 0 {Width} {Height}"));
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-label", title);
        root.AddFirst(new XElement(Svg + "title", title), new XElement(Svg + "desc", description));
        RenumberClips(root, name);
        foreach (var text in root.Descendants(Svg + "text"))
        {
            // The place of every letter fits only the font that it was measured with; the place of the first fits any.
            text.SetAttributeValue("x", First(text.Attribute("x")));
            text.SetAttributeValue("y", First(text.Attribute("y")));
            text.SetAttributeValue("font-family", WrittenFamily);
            text.Value = text.Value.Trim();
        }

        return root.ToString(SaveOptions.DisableFormatting);
    }

    /// <summary>The plot as a PNG, twice as fine as its size for print.</summary>
    public static byte[] ToPng(Plot plot)
    {
        plot.ScaleFactor = 2;
        return plot.GetImageBytes(2 * Width, 2 * Height, ImageFormat.Png);
    }

    /// <summary>A text of somebody's as it can stand in a figure, shortened to <paramref name="most"/> characters.</summary>
    public static string Safe(string text, int most)
    {
        var single = PaperText.OneLine(text);
        return single.Length <= most ? single : string.Concat(single.AsSpan(0, most - 1).TrimEnd(), "…");
    }

    // The drawing library counts on from one drawing to the next, so that the same figure would never be written the same way again.
    private static void RenumberClips(XElement root, string name)
    {
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var clip in root.Descendants(Svg + "clipPath"))
        {
            ids.Add($"url(#{(string)clip.Attribute("id")!})", FormattableString.Invariant($"{name}-{ids.Count + 1}"));
            clip.SetAttributeValue("id", FormattableString.Invariant($"{name}-{ids.Count}"));
        }

        foreach (var use in root.Descendants().Attributes("clip-path"))
        {
            use.Value = $"url(#{ids[use.Value]})";
        }
    }

    private static string? First(XAttribute? list) => list?.Value.Split(',', 2)[0].Trim();
}
