using Materia.Catalogue;

namespace Materia.Api.Ingredients;

/// <summary>Gathers the sources that a record cites.</summary>
public static class CitedSources
{
    /// <summary>Every source that a statement of <paramref name="ingredient"/> names or should be looked up in, by key, in the order of the keys.</summary>
    public static IReadOnlyDictionary<string, Source> Of(Ingredient ingredient, Release release)
    {
        var cited = new SortedDictionary<string, Source>(StringComparer.Ordinal);
        foreach (var key in ingredient.Statements().SelectMany(Keys).Concat(ingredient.Comedogenic.Count > 0 ? ComedogenicNote.CaveatSources : []))
        {
            if (release.FindSource(key) is { } source)
            {
                cited[key] = source;
            }
        }

        return cited;
    }

    private static IEnumerable<string> Keys(Statement statement) =>
        statement.CheckIn is { } checkIn ? [statement.Source, checkIn] : [statement.Source];
}
