using System.Text.Json;
using System.Text.Json.Serialization;

namespace Materia.Api.Evaluations;

/// <summary>
/// Writes computed numbers with four significant digits: no figure of this field is known better, and sixteen digits would
/// pretend that. Weights and percentages are decimals and stay exact.
/// </summary>
internal sealed class SignificantDigits : JsonConverter<double>
{
    private const int Digits = 4;

    // Beyond this many decimal places Math.Round has no say; such a number is next to nought and is written as it is.
    private const int MostPlaces = 15;

    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        // JSON has no word for these, and an unknown number is what null says.
        if (!double.IsFinite(value))
        {
            writer.WriteNullValue();
            return;
        }

        writer.WriteNumberValue(Round(value));
    }

    /// <summary>The number with four significant digits.</summary>
    internal static double Round(double value)
    {
        if (value == 0)
        {
            return 0;
        }

        var places = Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (places > MostPlaces)
        {
            return value;
        }

        if (places >= 0)
        {
            return Math.Round(value, places);
        }

        var scale = Math.Pow(10, -places);
        return Math.Round(value / scale) * scale;
    }
}
