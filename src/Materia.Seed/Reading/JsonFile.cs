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
            var value = JsonSerializer.Deserialize<T>(text, CatalogueJson.Options);
            if (value is null)
            {
                faults.Add(Path, 1, "the file holds null; write an object { … }");
            }

            return value;
        }
        catch (JsonException refusal)
        {
            JsonFaults.Explain(this, typeof(T), refusal, faults);
            return null;
        }
    }
}
