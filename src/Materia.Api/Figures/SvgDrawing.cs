using System.Globalization;
using System.Xml.Linq;

namespace Materia.Api.Figures;

/// <summary>Makes the library's SVG one that stays the same at each drawing, keeps its words as words and can stand inside a page.</summary>
internal static class SvgDrawing
{
    // What viewers without it fall back on is about as wide.
    private const string WrittenFamily = FigureFont.Family + ", Verdana, sans-serif";

    // How far a text's start may lie from where its anchor would put it [px].
    private const float Slack = 1.5f;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The SVG document, without an XML declaration so that it can stand inside HTML as well.</summary>
    /// <param name="drawn">The SVG as the library writes it.</param>
    /// <param name="name">The name of the figure; it begins the ids, so that several figures can share a page.</param>
    /// <param name="title">The accessible name.</param>
    /// <param name="description">What it shows, in words.</param>
    /// <param name="words">The words that were drawn with boxes.</param>
    public static string Finish(string drawn, string name, string title, string description, FigureWords words)
    {
        var root = XDocument.Parse(drawn).Root!;
        Renumber(root, name);
        root.SetAttributeValue("viewBox", $"0 0 {root.Attribute("width")!.Value} {root.Attribute("height")!.Value}");
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-labelledby", $"{name}-title {name}-desc");
        root.AddFirst(new XElement(Svg + "title", new XAttribute("id", $"{name}-title"), title), new XElement(Svg + "desc", new XAttribute("id", $"{name}-desc"), description));
        foreach (var text in root.Descendants(Svg + "text"))
        {
            Place(text);
            text.Value = words.Written(text.Value);
        }

        return root.ToString(SaveOptions.DisableFormatting);
    }

    /// <summary>The library counts its clip paths on from drawing to drawing; here they begin at 1 in each.</summary>
    private static void Renumber(XElement root, string name)
    {
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var clip in root.Descendants(Svg + "clipPath"))
        {
            var id = clip.Attribute("id")!;
            ids.TryAdd($"url(#{id.Value})", string.Create(CultureInfo.InvariantCulture, $"{name}-clip-{ids.Count + 1}"));
            id.Value = ids[$"url(#{id.Value})"];
        }

        foreach (var use in root.Descendants().Select(e => e.Attribute("clip-path")).OfType<XAttribute>())
        {
            use.Value = $"url(#{ids[use.Value]})";
        }
    }

    /// <summary>The library places each letter, which fits only the font that it measured with; start, middle or end fit any.</summary>
    private static void Place(XElement text)
    {
        text.Value = text.Value.Trim();
        var start = float.Parse(First(text, "x"), CultureInfo.InvariantCulture);
        var width = FigureFont.Width(text.Value, float.Parse(text.Attribute("font-size")!.Value, CultureInfo.InvariantCulture));
        var anchor = Math.Abs(start + (width / 2)) < Slack ? "middle" : Math.Abs(start + width) < Slack ? "end" : null;
        text.SetAttributeValue("x", anchor is null ? First(text, "x") : "0");
        text.SetAttributeValue("y", First(text, "y"));
        text.SetAttributeValue("text-anchor", anchor);
        text.SetAttributeValue("font-family", WrittenFamily);
    }

    private static string First(XElement text, string list) => text.Attribute(list)!.Value.Split(',', 2)[0].Trim();
}
