using System.Globalization;
using System.Text;

namespace Materia.Seed.Reporting;

/// <summary>A table in plain text: words to the left, numbers to the right, two blanks between the columns.</summary>
internal sealed class TextTable(params string[] header)
{
    private readonly List<string[]> rows = [header];
    private readonly bool[] isNumber = new bool[header.Length];

    /// <summary>Adds a row; a number is written as it is, an absent one as a hyphen.</summary>
    public void Add(params object?[] cells)
    {
        for (var i = 0; i < cells.Length; i++)
        {
            isNumber[i] |= cells[i] is not string;
        }

        rows.Add([.. cells.Select(c => c is null ? "-" : Convert.ToString(c, CultureInfo.InvariantCulture)!)]);
    }

    /// <summary>Writes the table, nothing when it has no rows below the header.</summary>
    public void Write(StringBuilder text)
    {
        if (rows.Count == 1)
        {
            return;
        }

        var widths = header.Select((_, i) => rows.Max(r => r[i].Length)).ToArray();
        foreach (var row in rows)
        {
            var cells = row.Select((cell, i) => isNumber[i] ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i]));
            text.Append(string.Join("  ", cells).TrimEnd()).Append('\n');
        }
    }
}
