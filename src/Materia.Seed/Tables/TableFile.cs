using System.Globalization;
using System.Text.Unicode;
using CsvHelper;
using Materia.Seed.Reading;

namespace Materia.Seed.Tables;

/// <summary>A table of the seed directory: CSV as RFC 4180 has it, UTF-8, one line for each row, a header, numbers with a point.</summary>
internal sealed class TableFile : SeedFile
{
    private readonly List<int> lines = [];

    private TableFile(string path)
        : base(path)
    {
    }

    /// <inheritdoc/>
    public override int? LineOf(string pointer) =>
        int.TryParse(pointer.AsSpan(Math.Min(1, pointer.Length)), CultureInfo.InvariantCulture, out var row) ? lines[row] : 1;

    /// <summary>Reads a table; rows with a fault are left out and the fault added to <paramref name="faults"/>.</summary>
    /// <typeparam name="T">The type of a row's record.</typeparam>
    /// <param name="directory">The seed directory.</param>
    /// <param name="path">The table's path in it.</param>
    /// <param name="columns">The columns, each of which must be there, in this order.</param>
    /// <param name="read">Makes a record of a row.</param>
    /// <param name="faults">Receives the faults.</param>
    public static TableRows<T> Read<T>(
        string directory, string path, IReadOnlyList<string> columns, Func<TableRow, T> read, FaultList faults)
    {
        var file = System.IO.Path.Combine(directory, path);
        if (!File.Exists(file))
        {
            faults.Add(path, null, $"the table is missing; add it, with the header {string.Join(",", columns)}");
            return new TableRows<T>([], IsComplete: false);
        }

        var text = File.ReadAllBytes(file);
        if (!Utf8.IsValid(text))
        {
            faults.Add(path, null, "the table is not valid UTF-8; save it as UTF-8");
            return new TableRows<T>([], IsComplete: false);
        }

        var table = new TableFile(path);
        var malformed = 0;
        using var csv = CsvReader.Create(text, Options(record =>
        {
            malformed++;
            faults.Add(path, (int)record.LineNumber, "a quote is out of place; put the whole field in quotes, on one line, and write each quote in it twice");
        }));
        var isKnown = table.AcceptsHeader(csv.Read() ? csv.Current.ToArray() : [], columns, faults);
        var rows = new List<Placed<T>>();
        while (isKnown && csv.Read())
        {
            var place = new Place(table, "").Element(table.lines.Count);
            table.lines.Add((int)csv.LineNumber);
            var row = new TableRow(place, columns, csv.Current.ToArray(), faults);
            var value = row.FitsHeader() ? read(row) : default;
            if (!row.HasFault)
            {
                rows.Add(new(value!, place));
            }
        }

        return new TableRows<T>(rows, isKnown && malformed == 0 && rows.Count == table.lines.Count);
    }

    private static CsvReaderOptions Options(Action<CsvMalformedRecord> malformed) => new()
    {
        Separator = ',',
        HasHeader = false,
        AllowLineBreaksInQuotes = false,
        SkipEmptyLines = false,
        TrackLineNumbers = true,
        MalformedData = CsvMalformedDataHandling.Skip,
        OnMalformedRecord = malformed,
    };

    private bool AcceptsHeader(string[] header, IReadOnlyList<string> columns, FaultList faults)
    {
        var found = new List<string>();
        found.AddRange(columns.Except(header, StringComparer.Ordinal).Select(c => $"column \"{c}\" is missing; add it"));
        found.AddRange(header.Except(columns, StringComparer.Ordinal).Select(c => $"unknown column \"{c}\"; the columns are {string.Join(",", columns)}"));
        if (found.Count == 0 && !header.SequenceEqual(columns, StringComparer.Ordinal))
        {
            found.Add($"the columns must stand once each and in this order: {string.Join(",", columns)}");
        }

        found.ForEach(message => faults.Add(Path, 1, message));
        return found.Count == 0;
    }
}
