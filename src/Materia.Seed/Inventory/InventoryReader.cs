using CsvHelper;

namespace Materia.Seed.Inventory;

/// <summary>
/// Reads the official European inventory of ingredient names from the export that its site offers: CSV with commas, semicolons or
/// tabs, in any encoding that a spreadsheet saves, with or without lines above the header, columns in any order. The file is read
/// row by row. What is wrong in a row is reported and put right or left out; the rest of the row stays.
/// </summary>
public static class InventoryReader
{
    private const int MostLinesAboveHeader = 30;

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The entries and every fault; no entries when no header with a column of INCI names is found or no row holds a name.</returns>
    public static InventoryFile Read(string path)
    {
        var faults = new List<InventoryFault>();
        var encoding = InventoryText.EncodingOf(path);
        foreach (var separator in (char[])[',', ';', '\t'])
        {
            using var text = new StreamReader(path, encoding, detectEncodingFromByteOrderMarks: true);
            using var csv = CsvReader.Create(text, Options(separator, faults), leaveOpen: true);
            if (Header(csv) is { } header)
            {
                return Rows(csv, header, faults);
            }

            faults.Clear();
        }

        return new InventoryFile
        {
            Faults = [new(null, $"no header with a column \"INCI name\" stands in the first {MostLinesAboveHeader} lines; export the inventory as CSV and name that file")],
        };
    }

    private static InventoryHeader? Header(CsvReader csv)
    {
        for (var i = 0; i < MostLinesAboveHeader && csv.Read(); i++)
        {
            if (InventoryHeader.Of(csv.Current.ToArray()) is { Width: > 1 } header)
            {
                return header;
            }
        }

        return null;
    }

    private static InventoryFile Rows(CsvReader csv, InventoryHeader header, List<InventoryFault> faults)
    {
        var entries = new InventoryEntries(faults);
        var rows = 0;
        while (csv.Read())
        {
            var row = csv.Current.ToArray();
            if (row.All(string.IsNullOrWhiteSpace))
            {
                continue;
            }

            rows++;
            var line = (int)csv.LineNumber;
            if (row.Length != header.Width)
            {
                faults.Add(new(line, $"the row has {row.Length} cells and the header {header.Width}; the row was left out"));
                continue;
            }

            entries.Add(line, row, header);
        }

        if (entries.Count == 0)
        {
            faults.Add(new(null, "the file holds no entry; export the inventory again"));
            return new InventoryFile { Faults = faults, Rows = rows };
        }

        if (!header.HasNumbers)
        {
            faults.Add(new(null, "the file has no column \"CAS No\"; entries are found by name only"));
        }

        faults.Sort((a, b) => Nullable.Compare(a.Line, b.Line));
        return new InventoryFile { Entries = entries.InOrder(), Faults = faults, Rows = rows };
    }

    private static CsvReaderOptions Options(char separator, List<InventoryFault> faults) => new()
    {
        Separator = separator,
        HasHeader = false,
        AllowLineBreaksInQuotes = true,
        SkipEmptyLines = true,
        TrackLineNumbers = true,
        MalformedData = CsvMalformedDataHandling.Skip,
        OnMalformedRecord = record => faults.Add(new((int)record.LineNumber, "a quote is out of place; the row was left out")),
    };
}
