using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Contents;

namespace Materia.Regulation.Allergens;

/// <summary>The allergens of a release by what they name.</summary>
internal sealed class AllergenIndex
{
    private static readonly ConditionalWeakTable<Release, AllergenIndex> Known = [];

    private readonly FrozenDictionary<string, Allergen[]> byKey;
    private readonly FrozenDictionary<string, int> order;

    private AllergenIndex(Release release)
    {
        byKey = release.Content.Allergens
            .SelectMany(a => a.Members.SelectMany(IngredientContents.Keys).Distinct(StringComparer.Ordinal).Select(key => (Key: key, Allergen: a)))
            .GroupBy(p => p.Key, p => p.Allergen, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
        order = release.Content.Allergens.Select((a, place) => (a.Id, place)).ToFrozenDictionary(p => p.Id, p => p.place, StringComparer.Ordinal);
    }

    /// <summary>The index of a release, made once.</summary>
    public static AllergenIndex Of(Release release) => Known.GetValue(release, r => new AllergenIndex(r));

    /// <summary>The allergens that name something in the materials, in the order of the table.</summary>
    public IReadOnlyList<Allergen> Naming(RegulatedFormula formula)
    {
        var found = new HashSet<Allergen>(ReferenceEqualityComparer.Instance);
        foreach (var key in formula.Contents.SelectMany(c => c.AllKeys))
        {
            if (byKey.TryGetValue(key, out var allergens))
            {
                found.UnionWith(allergens);
            }
        }

        return [.. found.OrderBy(a => order[a.Id])];
    }
}
