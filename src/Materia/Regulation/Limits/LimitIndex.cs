using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Contents;

namespace Materia.Regulation.Limits;

/// <summary>The limits of a release by what they name, so that an evaluation meets only those that concern it.</summary>
internal sealed class LimitIndex
{
    private static readonly ConditionalWeakTable<Release, LimitIndex> Known = [];

    private readonly FrozenDictionary<string, Limit[]> byKey;

    private LimitIndex(Release release)
    {
        byKey = release.Content.Limits
            .SelectMany(limit => limit.Members.SelectMany(IngredientContents.Keys).Distinct(StringComparer.Ordinal).Select(key => (Key: key, Limit: limit)))
            .GroupBy(p => p.Key, p => p.Limit, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
        Order = release.Content.Limits.Select((limit, place) => (limit.Id, place)).ToFrozenDictionary(p => p.Id, p => p.place, StringComparer.Ordinal);
        FragranceKeys = release.Content.Allergens.SelectMany(a => a.Members)
            .Concat(release.Content.Limits.Where(l => l.Kind is LimitKind.Fragrance or LimitKind.Phototoxic).SelectMany(l => l.Members))
            .Select(m => m.Cas).OfType<string>().ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The place of each limit in the table.</summary>
    public FrozenDictionary<string, int> Order { get; }

    /// <summary>CAS numbers of the substances that natural materials may hold without saying so.</summary>
    public FrozenSet<string> FragranceKeys { get; }

    /// <summary>The index of a release, made once.</summary>
    public static LimitIndex Of(Release release) => Known.GetValue(release, r => new LimitIndex(r));

    /// <summary>The limits that name something in the materials, in the order of the table.</summary>
    public IReadOnlyList<Limit> Naming(RegulatedFormula formula)
    {
        var found = new HashSet<Limit>(ReferenceEqualityComparer.Instance);
        foreach (var key in formula.Contents.SelectMany(c => c.AllKeys))
        {
            if (byKey.TryGetValue(key, out var limits))
            {
                found.UnionWith(limits);
            }
        }

        return [.. found.OrderBy(l => Order[l.Id])];
    }

    /// <summary>Whether a substance is one that natural materials may hold without saying so.</summary>
    public bool MayBeUnstated(Limit limit) => limit.Members.Any(m => m.Cas is { } cas && FragranceKeys.Contains(cas));
}
