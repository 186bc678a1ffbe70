using System.Text.Json;
using System.Text.Json.Serialization;
using Materia.Api.Evaluations;

namespace Materia.Api.Ingredients;

/// <summary>Writes computed figures as evaluations write them: they have the digits of a computation, not those of a stored figure.</summary>
public sealed class ComputedFiguresWriter : JsonConverter<ComputedFigures>
{
    /// <inheritdoc/>
    public override ComputedFigures Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Computed figures are written only.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, ComputedFigures value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, value, EvaluationJson.Options);
}
