using System.Collections.Frozen;

namespace Materia.Catalogue.Inventory;

/// <summary>
/// Which curated ingredients an entry of the inventory stands for: those that carry its INCI name, their parts' names left aside,
/// and, apart from them, those that only share a CAS number with it.
/// </summary>
public sealed class CuratedLinks
{
    private readonly FrozenDictionary<string, IReadOnlyList<string>> byName;
    private readonly FrozenDictionary<string, IReadOnlyList<string>> byCas;

    /// <summary>Links to the ingredients of a release.</summary>
    public CuratedLinks(Release release)
    {
        byName = ByKey(release, i => i.Names.Where(n => n.Kind == NameKind.Inci).Select(n => n.Text), StringComparer.OrdinalIgnoreCase);
        byCas = ByKey(release, i => i.Numbers.Where(n => n.Registry == Registry.Cas).Select(n => n.Number), StringComparer.Ordinal);
    }

    /// <summary>The ids of the ingredients that carry the entry's INCI name, in the order of the ids.</summary>
    public IReadOnlyList<string> WithName(InventoryEntry entry) => byName.GetValueOrDefault(entry.InciName, []);

    /// <summary>The ids of the ingredients that share a CAS number with the entry and do not carry its name, in the order of the ids.</summary>
    public IReadOnlyList<string> WithNumberOnly(InventoryEntry entry)
    {
        var named = WithName(entry);
        return [.. entry.CasNumbers.SelectMany(n => byCas.GetValueOrDefault(n, [])).Except(named).Order(StringComparer.Ordinal)];
    }

    private static FrozenDictionary<string, IReadOnlyList<string>> ByKey(
        Release release, Func<Ingredient, IEnumerable<string>> keys, IEqualityComparer<string> comparer) =>
        release.Content.Ingredients
            .SelectMany(i => keys(i).Distinct(comparer).Select(key => (Key: key, i.Id)))
            .GroupBy(p => p.Key, p => p.Id, comparer)
            .ToFrozenDictionary(g => g.Key, IReadOnlyList<string> (g) => [.. g.Order(StringComparer.Ordinal)], comparer);
}
