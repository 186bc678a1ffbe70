using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Materia.Catalogue;

namespace Materia.Seed.Reading;

/// <summary>
/// Compares a JSON value with the record it should hold. The serializer stops at the first member that does not fit, and
/// takes an enumeration's word in any case and even several with commas; this goes on to the end, so that a curator sees all
/// of a file's slips at once, and takes a word only as it is written.
/// </summary>
internal static class ShapeComparison
{
    private static readonly ConcurrentDictionary<Type, FrozenDictionary<string, JsonPropertyInfo>> Members = new();

    /// <summary>Adds a fault for each member that is unknown, repeated, missing or of the wrong form; gives their number.</summary>
    public static int Compare(JsonElement element, Type type, Place place, FaultList faults)
    {
        var wanted = Nullable.GetUnderlyingType(type) ?? type;
        var info = CatalogueJson.Options.GetTypeInfo(wanted);
        return info.Kind switch
        {
            JsonTypeInfoKind.Object => CompareObject(element, info, place, faults),
            JsonTypeInfoKind.Enumerable => CompareList(element, info, place, faults),
            _ => ScalarForm.Fits(element, wanted) ? 0 : Fault(place, $"{element.GetRawText()} does not fit; {ScalarForm.Wanted(wanted)}", faults),
        };
    }

    private static int CompareObject(JsonElement element, JsonTypeInfo info, Place place, FaultList faults)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            return Fault(place, "an object is wanted here; write { … }", faults);
        }

        var found = 0;
        var known = Members.GetOrAdd(info.Type, _ => info.Properties.ToFrozenDictionary(p => p.Name, StringComparer.Ordinal));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            var at = place.Member(member.Name);
            if (!known.TryGetValue(member.Name, out var property))
            {
                found += Fault(at, $"unknown member \"{member.Name}\"; the members are {string.Join(", ", info.Properties.Select(p => p.Name))}", faults);
            }
            else if (!seen.Add(member.Name))
            {
                found += Fault(at, $"member \"{member.Name}\" stands twice; keep one", faults);
            }
            else if (member.Value.ValueKind != JsonValueKind.Null)
            {
                found += Compare(member.Value, property.PropertyType, at, faults);
            }
            else if (!property.IsSetNullable)
            {
                found += Fault(at, $"member \"{member.Name}\" is null; leave it out or give its value", faults);
            }
        }

        foreach (var property in info.Properties.Where(p => p.IsRequired && !seen.Contains(p.Name)))
        {
            found += Fault(place, $"member \"{property.Name}\" is missing; add it", faults);
        }

        return found;
    }

    private static int CompareList(JsonElement element, JsonTypeInfo info, Place place, FaultList faults)
    {
        if (element.ValueKind != JsonValueKind.Array)
        {
            return Fault(place, "a list is wanted here; write [ … ]", faults);
        }

        var found = 0;
        var index = 0;
        foreach (var item in element.EnumerateArray())
        {
            found += Compare(item, info.ElementType!, place.Element(index++), faults);
        }

        return found;
    }

    private static int Fault(Place place, string message, FaultList faults)
    {
        faults.Add(place, message);
        return 1;
    }
}
