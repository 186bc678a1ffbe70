using System.Text.Json;
using Materia.Formulation;

namespace Materia.Api.Evaluations.Reading;

/// <summary>Reads JSON strictly and says of everything that is wrong where it stands and what to write instead.</summary>
internal static class StrictJson
{
    /// <summary>Reads <paramref name="utf8"/> as a <typeparamref name="T"/>.</summary>
    /// <returns>The value, or every fault; exactly one of the two.</returns>
    public static (T? Value, IReadOnlyList<FormulaFault> Faults) Read<T>(ReadOnlyMemory<byte> utf8, JsonSerializerOptions options)
        where T : class
    {
        // A byte order mark is no part of JSON, but editors write it.
        var text = utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        if (JsonSyntax.FirstFault(text.Span) is { } broken)
        {
            return (null, [broken]);
        }

        using var document = JsonDocument.Parse(text);
        if (document.RootElement.ValueKind == JsonValueKind.Null)
        {
            return (null, [new FormulaFault(string.Empty, "The body is null; send a JSON object.")]);
        }

        var faults = JsonShape.Faults<T>(document.RootElement, options);
        return faults.Count > 0 ? (null, faults) : (document.Deserialize<T>(options), []);
    }
}
