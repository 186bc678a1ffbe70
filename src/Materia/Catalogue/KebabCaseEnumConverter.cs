using System.Text.Json;
using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>Writes an enumeration as the kebab-case word that the seed files, the query strings and the JSON share, and refuses numbers.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
public sealed class KebabCaseEnumConverter<T>()
    : JsonStringEnumConverter<T>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false)
    where T : struct, Enum;
