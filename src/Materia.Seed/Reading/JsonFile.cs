using System.Text.Json;
using System.Text.Unicode;
using Materia.Catalogue;

namespace Materia.Seed.Reading;

/// <summary>A JSON file of the seed directory.</summary>
internal sealed class JsonFile : SeedFile
{
    private readonly byte[] text;
    private LineMap? lines;

    /// <summary>Takes over a file's bytes.</summary>
    public JsonFile(string path, byte[] text)
        : base(path) => this.text = text;

    /// <summary>The file's bytes.</summary>
    public ReadOnlySpan<byte> Text => text;

    /// <summary>The file's bytes, for readers that keep them.</summary>
    public ReadOnlyMemory<byte> Memory => text;

    /// <inheritdoc/>
    public override int? LineOf(string pointer) => (lines ??= LineMap.Of(text)).LineOf(pointer);

    /// <summary>Reads the record that the file holds; on any fault adds it to <paramref name="faults"/> and gives <see langword="null"/>.</summary>
    /// <typeparam name="T">The type of the record.</typeparam>
    public T? Read<T>(FaultList faults)
        where T : class
    {
        if (Text.StartsWith("\uFEFF"u8))
        {
            faults.Add(Path, 1, "the file begins with a byte order mark; save it as UTF-8 without one");
            return null;
        }

        if (!Utf8.IsValid(text))
        {
            faults.Add(Path, null, "the file is not valid UTF-8; save it as UTF-8");
            return null;
        }

        try
        {
            using var document = JsonDocument.Parse(text);
            var found = ShapeComparison.Compare(document.RootElement, typeof(T), new Place(this, ""), faults);
            return found == 0 ? document.Deserialize<T>(CatalogueJson.Options) : null;
        }
        catch (JsonException refusal)
        {
            var line = (int)(refusal.LineNumber ?? 0) + 1;
            faults.Add(Path, line, $"not valid JSON: {Plain(refusal.Message)} Look at this line and the end of the one before");
            return null;
        }
        catch (InvalidOperationException)
        {
            faults.Add(Path, null, "a \\u escape in the file is half a character; write the character itself");
            return null;
        }
    }

    /// <summary>The message without the path and line that the reader appends; the fault has its own.</summary>
    private static string Plain(string message)
    {
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return end < 0 ? message : message[..end];
    }
}
