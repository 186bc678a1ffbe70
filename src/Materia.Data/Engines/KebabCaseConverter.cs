using Materia.Catalogue;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Materia.Data.Engines;

/// <summary>Stores an enumeration as its kebab-case word, as the JSON does.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
internal sealed class KebabCaseConverter<T>() : ValueConverter<T, string>(value => KebabCase<T>.Word(value), word => Parse(word))
    where T : struct, Enum
{
    private static T Parse(string word) => KebabCase<T>.TryParse(word, out var value)
        ? value
        : throw new InvalidOperationException(
            $"The database holds the {typeof(T).Name} '{word}', which this version does not know; run the version that published it, or a newer one.");
}
