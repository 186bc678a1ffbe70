using CsvHelper;

namespace Materia.Seed.Formatting;

/// <summary>The one way to lay out a table: RFC 4180 with LF, quotes only where a field needs them, no byte order mark.</summary>
public static class CanonicalTable
{
    /// <summary>The canonical text of a table whose rows are well formed; its fields stay as they are.</summary>
    /// <param name="text">The table, UTF-8.</param>
    public static byte[] Write(byte[] text)
    {
        using var reader = CsvReader.Create(text, new CsvReaderOptions { Separator = ',', HasHeader = false });
        using var stream = new MemoryStream();
        using (var writer = CsvWriter.Create(stream, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            while (reader.Read())
            {
                writer.WriteRecord(reader.Current.ToArray());
            }
        }

        return stream.ToArray();
    }
}
