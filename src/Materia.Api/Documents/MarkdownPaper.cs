using System.Text;

namespace Materia.Api.Documents;

/// <summary>Writes a document as Markdown (CommonMark with tables); what would be markup in somebody's text is escaped.</summary>
internal static class MarkdownPaper
{
    private const string Markup = "\\`*_{}[]<>()#+-.!|~&";

    /// <summary>The text in UTF-8.</summary>
    public static byte[] Write(Paper paper)
    {
        var text = new StringBuilder().Append("# ").Append(Plain(paper.Title)).Append("\n\n");
        foreach (var block in paper.Blocks)
        {
            Write(block, text);
            text.Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString().TrimEnd('\n') + "\n");
    }

    private static void Write(PaperBlock block, StringBuilder text)
    {
        switch (block)
        {
            case Heading heading:
                text.Append('#', heading.Level).Append(' ').Append(Plain(heading.Text)).Append('\n');
                break;
            case Paragraph paragraph:
                text.Append(paragraph.IsNote ? "> " : "").Append(Plain(paragraph.Text)).Append('\n');
                break;
            case Bullets bullets:
                foreach (var item in bullets.Items)
                {
                    text.Append(bullets.Ticked ? "- [ ] " : "- ").Append(Plain(item)).Append('\n');
                }

                break;
            case Table table:
                text.Append(Plain(table.Caption)).Append("\n\n");
                Row(table.Columns.Select(c => c.Heading), text);
                text.Append("| ").AppendJoin(" | ", table.Columns.Select(c => c.IsNumber ? "---:" : "---")).Append(" |\n");
                foreach (var row in table.Rows)
                {
                    Row(row, text);
                }

                break;
            case Drawing drawing:
                // The words stand for the drawing; it can be had as SVG or PNG.
                text.Append('*').Append(Plain(drawing.Caption)).Append("*\n");
                break;
            case Blanks blanks:
                foreach (var label in blanks.Labels)
                {
                    text.Append("- ").Append(Plain(label)).Append(": \\_\\_\\_\\_\\_\\_\\_\\_\n");
                }

                break;
            default:
                throw new NotSupportedException($"Markdown has no form for {block.GetType().Name}.");
        }
    }

    private static void Row(IEnumerable<string> cells, StringBuilder text) => text.Append("| ").AppendJoin(" | ", cells.Select(Plain)).Append(" |\n");

    private static string Plain(string text)
    {
        var escaped = new StringBuilder(text.Length);
        var line = PaperText.OneLine(text);
        for (var i = 0; i < line.Length; i++)
        {
            // Full stops, brackets and hyphens mean something only where a list or a link could begin; inside a sentence they stay as they are.
            var means = line[i] switch
            {
                '.' or ')' => i > 0 && i < 10 && line[..i].All(char.IsAsciiDigit),
                '-' or '+' or '#' => i == 0,
                '(' => i > 0 && line[i - 1] == ']',
                '!' => i + 1 < line.Length && line[i + 1] == '[',
                _ => Markup.Contains(line[i], StringComparison.Ordinal),
            };
            escaped.Append(means ? "\\" : "").Append(line[i]);
        }

        return escaped.ToString();
    }
}
