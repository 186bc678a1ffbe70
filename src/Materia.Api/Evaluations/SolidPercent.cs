using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Materia.Chemistry;

namespace Materia.Api.Evaluations;

/// <summary>
/// Writes solid contents to a hundredth of a percent: the model's band is hundreds of times wider, and what is left of a melted fat,
/// such as 0.0004 %, is nothing rather than a number with digits of its own.
/// </summary>
internal sealed class SolidPercent : JsonConverter<double>
{
    private const int Decimals = 2;

    /// <summary>Makes the numbers of solid contents, but not the temperatures beside them, be written so.</summary>
    public static void Round(JsonTypeInfo info)
    {
        if (info.Type == typeof(SolidContentPoint) || info.Type == typeof(TexturePoint))
        {
            foreach (var member in info.Properties.Where(m => m.PropertyType == typeof(double) && m.Name != "temperature"))
            {
                member.CustomConverter = new SolidPercent();
            }
        }
    }

    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    // Adding nought turns a negative nought, which would be written with its sign, into a plain one.
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(Math.Round(value, Decimals) + 0.0);
}
