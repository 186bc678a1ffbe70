namespace Materia.Seed.Inventory;

/// <summary>Where the columns of an inventory file stand. Their order is free, unknown ones are passed over, and headings may be spelled in several ways.</summary>
internal sealed class InventoryHeader
{
    // Letters and digits only, in lower case. The official export's headings come first; conversions of it write the others.
    private static readonly Dictionary<string, InventoryColumn> Headings = new(StringComparer.Ordinal)
    {
        ["inciname"] = InventoryColumn.InciName,
        ["inci"] = InventoryColumn.InciName,
        ["innname"] = InventoryColumn.InnName,
        ["inn"] = InventoryColumn.InnName,
        ["pheurname"] = InventoryColumn.PharmacopoeiaName,
        ["casno"] = InventoryColumn.Cas,
        ["casnumber"] = InventoryColumn.Cas,
        ["cas"] = InventoryColumn.Cas,
        ["casfirst"] = InventoryColumn.Cas,
        ["ecno"] = InventoryColumn.Ec,
        ["ecnumber"] = InventoryColumn.Ec,
        ["ec"] = InventoryColumn.Ec,
        ["einecselincsno"] = InventoryColumn.Ec,
        ["chemiupacnamedescription"] = InventoryColumn.Description,
        ["chemicaliupacnamedescription"] = InventoryColumn.Description,
        ["description"] = InventoryColumn.Description,
        ["restriction"] = InventoryColumn.Restriction,
        ["function"] = InventoryColumn.Function,
        ["functions"] = InventoryColumn.Function,
    };

    private readonly int[] places;

    private InventoryHeader(int[] places, int width)
    {
        this.places = places;
        Width = width;
    }

    /// <summary>The number of columns.</summary>
    public int Width { get; }

    /// <summary>Whether the file holds nothing but names, which would link to nothing by number.</summary>
    public bool HasNumbers => places[(int)InventoryColumn.Cas] >= 0;

    /// <summary>Reads a row as a header; <see langword="null"/> when it names no column of INCI names or names one column twice.</summary>
    public static InventoryHeader? Of(IReadOnlyList<string> cells)
    {
        var places = new int[Enum.GetValues<InventoryColumn>().Length];
        Array.Fill(places, -1);
        for (var i = 0; i < cells.Count; i++)
        {
            if (Headings.TryGetValue(Key(cells[i]), out var column))
            {
                if (places[(int)column] >= 0)
                {
                    return null;
                }

                places[(int)column] = i;
            }
        }

        return places[(int)InventoryColumn.InciName] < 0 ? null : new InventoryHeader(places, cells.Count);
    }

    /// <summary>The text of a column in a row, spaces tidied; empty where the file has no such column or the cell says that there is nothing.</summary>
    public string Text(string[] row, InventoryColumn column)
    {
        var place = places[(int)column];
        var text = place < 0 || place >= row.Length ? "" : Tidy(row[place]);
        return text is "-" or "--" ? "" : text;
    }

    private static string Key(string heading) => string.Concat(heading.Where(char.IsAsciiLetterOrDigit)).ToLowerInvariant();

    // Non-breaking spaces and line breaks within a cell count as spaces.
    private static string Tidy(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
