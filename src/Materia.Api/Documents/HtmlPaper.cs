using System.Text;
using System.Xml.Linq;

namespace Materia.Api.Documents;

/// <summary>
/// Writes a document as a page that needs nothing from outside, for screens and printers. It is built as a tree of elements, so that no
/// text of a maker can become markup.
/// </summary>
internal static class HtmlPaper
{
    private static readonly HashSet<string> Void = new(StringComparer.Ordinal) { "meta" };

    /// <summary>The page in UTF-8.</summary>
    public static byte[] Write(Paper paper)
    {
        var head = El("head",
            new XElement("meta", new XAttribute("charset", "utf-8")),
            new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
            El("title", Plain(paper.Title)),
            El("style", PaperStyle.Text));
        var body = El("body", new XAttribute("class", paper.Kind), El("main", El("h1", Plain(paper.Title)), paper.Blocks.Select(Block)));
        var html = new XElement("html", new XAttribute("lang", "en"), head, body);
        foreach (var empty in html.Descendants().Where(e => e.IsEmpty && !Void.Contains(e.Name.LocalName) && e.Name.Namespace == XNamespace.None))
        {
            // An empty element written short would be read as an open one.
            empty.Value = "";
        }

        return Encoding.UTF8.GetBytes("<!DOCTYPE html>\n" + html.ToString(SaveOptions.DisableFormatting) + "\n");
    }

    private static XElement Block(PaperBlock block) => block switch
    {
        Heading heading => El("h" + heading.Level, Plain(heading.Text)),
        Paragraph paragraph => El("p", paragraph.IsNote ? new XAttribute("class", "note") : null, Plain(paragraph.Text)),
        Bullets bullets => El("ul", bullets.Ticked ? new XAttribute("class", "ticks") : null, bullets.Items.Select(i => El("li", bullets.Ticked ? El("span", new XAttribute("class", "box"), new XAttribute("aria-hidden", "true")) : null, Plain(i)))),
        Table table => El("div", new XAttribute("class", "scroll"), new XAttribute("tabindex", "0"), new XAttribute("role", "region"), new XAttribute("aria-label", Plain(table.Caption)), Of(table)),
        Drawing drawing => El("figure", XElement.Parse(drawing.Svg), El("figcaption", Plain(drawing.Caption))),
        Blanks blanks => El("dl", new XAttribute("class", "blanks"), blanks.Labels.Select(l => El("div", El("dt", Plain(l)), El("dd")))),
        _ => throw new NotSupportedException($"A page has no form for {block.GetType().Name}."),
    };

    private static XElement Of(Table table) => El("table",
        El("caption", Plain(table.Caption)),
        El("thead", El("tr", table.Columns.Select(c => El("th", new XAttribute("scope", "col"), Class(c), Plain(c.Heading))))),
        El("tbody", table.Rows.Select(r => El("tr", r.Select((cell, i) => El("td", Class(table.Columns[i]), Plain(cell)))))));

    private static XAttribute? Class(Column column) => column.IsNumber ? new("class", "number") : column.IsBlank ? new("class", "blank") : null;

    private static XElement El(string name, params object?[] content) => new(name, content);

    private static string Plain(string text) => PaperText.OneLine(text);
}
