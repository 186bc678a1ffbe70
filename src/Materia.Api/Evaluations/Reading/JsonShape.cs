using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Materia.Api.Http;
using Materia.Formulation;

namespace Materia.Api.Evaluations.Reading;

/// <summary>
/// Compares a JSON text with the type it should become and names every difference with its pointer, where the serializer would
/// stop at the first and speak of types.
/// </summary>
internal sealed class JsonShape(JsonSerializerOptions options)
{
    /// <summary>A hostile text can be wrong in a million places; these tell enough.</summary>
    private const int MostFaults = 50;

    private readonly List<FormulaFault> faults = [];

    /// <summary>All differences of <paramref name="element"/> from <typeparamref name="T"/>, at most fifty.</summary>
    public static IReadOnlyList<FormulaFault> Faults<T>(JsonElement element, JsonSerializerOptions options)
    {
        var shape = new JsonShape(options);
        shape.Check(element, options.GetTypeInfo(typeof(T)), string.Empty);
        return shape.faults;
    }

    private void Check(JsonElement element, JsonTypeInfo info, string pointer)
    {
        if (faults.Count >= MostFaults)
        {
            return;
        }

        switch (info.Kind)
        {
            case JsonTypeInfoKind.Object when element.ValueKind == JsonValueKind.Object:
                CheckMembers(element, info, pointer);
                break;
            case JsonTypeInfoKind.Object:
                Add(pointer, $"An object {{ … }} is expected here, not {JsonScalar.Describe(element)}.");
                break;
            case JsonTypeInfoKind.Enumerable when element.ValueKind == JsonValueKind.Array:
                var of = options.GetTypeInfo(info.ElementType!);
                var index = 0;
                foreach (var item in element.EnumerateArray())
                {
                    Check(item, of, $"{pointer}/{index++}");
                    if (faults.Count >= MostFaults)
                    {
                        return;
                    }
                }

                break;
            case JsonTypeInfoKind.Enumerable:
                Add(pointer, $"A list [ … ] is expected here, not {JsonScalar.Describe(element)}.");
                break;
            default:
                if (JsonScalar.Fault(element, Nullable.GetUnderlyingType(info.Type) ?? info.Type) is { } message)
                {
                    Add(pointer, message);
                }

                break;
        }
    }

    private void CheckMembers(JsonElement element, JsonTypeInfo info, string pointer)
    {
        foreach (var member in element.EnumerateObject())
        {
            var at = $"{pointer}/{JsonPointer.Escape(member.Name)}";
            if (Find(info, member.Name) is not { } property)
            {
                Add(at, Unknown(member.Name, info));
            }
            else if (member.Value.ValueKind != JsonValueKind.Null)
            {
                Check(member.Value, options.GetTypeInfo(property.PropertyType), at);
            }
            else if (!property.IsSetNullable)
            {
                Add(at, "null cannot stand here. Give a value, or leave the member out.");
            }
        }
    }

    private static JsonPropertyInfo? Find(JsonTypeInfo info, string name)
    {
        foreach (var property in info.Properties)
        {
            if (property.Name == name && property.Set is not null)
            {
                return property;
            }
        }

        return null;
    }

    private static string Unknown(string name, JsonTypeInfo info)
    {
        var known = info.Properties.Where(p => p.Set is not null).Select(p => p.Name).ToList();
        var shown = name.Length <= 60 ? name : string.Concat(name.AsSpan(0, 57), "...");
        return NearestWord.Of(name, known) is { } nearest
            ? $"There is no member \"{shown}\" here. Did you mean \"{nearest}\"? Otherwise take it out."
            : $"There is no member \"{shown}\" here. Take it out, or use one of {string.Join(", ", known.Take(12).Select(k => $"\"{k}\""))}{(known.Count > 12 ? " and others" : string.Empty)}.";
    }

    private void Add(string pointer, string message)
    {
        if (faults.Count < MostFaults)
        {
            faults.Add(new FormulaFault(pointer, message));
        }
    }
}
