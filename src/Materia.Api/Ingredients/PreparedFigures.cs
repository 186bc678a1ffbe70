using System.Collections;
using System.Text.Json;
using System.Text.Json.Serialization;
using Materia.Api.Http;
using Materia.Catalogue;

namespace Materia.Api.Ingredients;

/// <summary>Figures of an ingredient with their JSON, made once for a release: a page of hits repeats them at every search.</summary>
public sealed class PreparedFigures(IReadOnlyList<Figure> figures) : IReadOnlyList<Figure>
{
    private readonly byte[] json = JsonSerializer.SerializeToUtf8Bytes(figures, ApiJson.Options);

    /// <inheritdoc/>
    public int Count => figures.Count;

    /// <inheritdoc/>
    public Figure this[int index] => figures[index];

    /// <inheritdoc/>
    public IEnumerator<Figure> GetEnumerator() => figures.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Writes lists of figures: prepared ones as the bytes they hold, which are this service's own JSON.</summary>
    public sealed class Writer : JsonConverter<IReadOnlyList<Figure>>
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Figure> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("Prepared figures are written only.");

        /// <inheritdoc/>
        public override void Write(Utf8JsonWriter writer, IReadOnlyList<Figure> value, JsonSerializerOptions options)
        {
            if (value is PreparedFigures prepared)
            {
                writer.WriteRawValue(prepared.json, skipInputValidation: true);
            }
            else
            {
                JsonSerializer.Serialize(writer, value, ApiJson.Options);
            }
        }
    }
}
