using System.Collections.Frozen;
using Materia.Catalogue;

namespace Materia.Formulation.Scopes;

/// <summary>
/// Plants that people leave out together, by genus. A group holds what the catalogue says comes from those plants; derivatives whose
/// origin is not stated, such as fatty alcohols and glycerin, may come from them all the same.
/// </summary>
public static class SpeciesGroups
{
    private static readonly FrozenDictionary<string, FrozenSet<string>> Groups = new Dictionary<string, string[]>
    {
        ["palm"] = ["Elaeis"],
        ["coconut"] = ["Cocos"],
        ["citrus"] = ["Citrus"],
        ["wheat"] = ["Triticum"],
        ["maize"] = ["Zea"],
        ["rice"] = ["Oryza"],
    }.ToFrozenDictionary(g => g.Key, g => g.Value.ToFrozenSet(StringComparer.Ordinal), StringComparer.Ordinal);

    /// <summary>The names of the groups.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Groups.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The genera of a group, or <see langword="null"/>.</summary>
    public static IReadOnlySet<string>? Find(string word) => Groups.GetValueOrDefault(word);

    /// <summary>The genus of an ingredient's plant or animal, or <see langword="null"/>.</summary>
    public static string? Genus(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Origin?.Species is { Length: > 0 } species ? species.Split(' ')[0] : null;
    }
}
