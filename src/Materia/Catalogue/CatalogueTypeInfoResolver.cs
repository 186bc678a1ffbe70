using System.Collections;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Materia.Catalogue;

/// <summary>
/// Leaves empty lists out of the JSON, and writes members that a JSON reader expects even when they hold their type's default:
/// a required number, enumeration or text is always written.
/// </summary>
internal sealed class CatalogueTypeInfoResolver : DefaultJsonTypeInfoResolver
{
    public override JsonTypeInfo GetTypeInfo(Type type, JsonSerializerOptions options)
    {
        var info = base.GetTypeInfo(type, options);
        foreach (var property in info.Properties)
        {
            if (property.IsRequired)
            {
                property.ShouldSerialize = static (_, _) => true;
            }
            else if (property.PropertyType != typeof(string) && typeof(IEnumerable).IsAssignableFrom(property.PropertyType))
            {
                property.ShouldSerialize = static (_, value) => value is ICollection { Count: > 0 };
            }
        }

        return info;
    }
}
