using System.Text.Json;
using System.Text.Json.Serialization;

namespace Materia.Formulation.Substituting;

/// <summary>A line of a formula, named by its place (a number, from nought) or by its material (a text: the ingredient's id or the maker's own name).</summary>
/// <param name="Index">The place.</param>
/// <param name="Material">The material; every line of it is meant.</param>
[JsonConverter(typeof(LineChoiceConverter))]
public sealed record LineChoice(int? Index, string? Material);

/// <summary>Reads a number or a text.</summary>
internal sealed class LineChoiceConverter : JsonConverter<LineChoice>
{
    public override LineChoice Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number ? new(reader.GetInt32(), null) : new(null, reader.GetString());

    public override void Write(Utf8JsonWriter writer, LineChoice value, JsonSerializerOptions options)
    {
        if (value.Index is { } index)
        {
            writer.WriteNumberValue(index);
        }
        else
        {
            writer.WriteStringValue(value.Material);
        }
    }
}
