using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Lookup;

/// <summary>Finds the limits of a release by what they name. Nothing is added up: that a limit names a material says nothing about a formula.</summary>
public sealed class LimitLookup
{
    // Below this a text is in the middle of too many words to mean anything.
    private const int ShortestPart = 3;

    private static readonly ConditionalWeakTable<Release, LimitLookup> Known = [];

    private readonly IReadOnlyList<Limit> limits;
    private readonly FrozenDictionary<string, int[]> byKey;
    private readonly FrozenDictionary<string, int[]> byName;

    private LimitLookup(Release release)
    {
        limits = release.Content.Limits;
        byKey = Index(limit => limit.Members.SelectMany(Identities));
        byName = Index(limit => limit.Members.SelectMany(m => new[] { m.Cas, m.InciName, m.Name }).Append(limit.Substance).OfType<string>().Select(n => n.ToUpperInvariant()));
    }

    /// <summary>The lookup of a release, made once.</summary>
    public static LimitLookup Of(Release release) => Known.GetValue(release, r => new LimitLookup(r));

    /// <summary>The limits that name an ingredient or its parts, and with <paramref name="withConstituents"/> what its oils hold, in the order of the table; each once.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="release">The release that it and the limits come from.</param>
    /// <param name="withConstituents">Whether constituents count.</param>
    public IReadOnlyList<LimitMatch> Find(Ingredient ingredient, Release release, bool withConstituents)
    {
        var found = new SortedDictionary<int, LimitMatch>();
        foreach (var named in NamedContent.Of(ingredient, release, withConstituents))
        {
            foreach (var place in named.Keys.SelectMany(key => byKey.GetValueOrDefault(key, [])))
            {
                // What comes first, the ingredient itself, says most.
                if (!limits[place].ExceptIngredients.Contains(ingredient.Id, StringComparer.Ordinal))
                {
                    found.TryAdd(place, new LimitMatch(limits[place], named.Name, named.As));
                }
            }
        }

        return [.. found.Values];
    }

    /// <summary>
    /// The limits that name a substance: those whose members or substance are called so or have the number, letter case aside; where
    /// there is none, those in whose names the text stands.
    /// </summary>
    /// <param name="text">A name, an INCI name or a CAS number.</param>
    public IReadOnlyList<LimitMatch> Find(string text)
    {
        var sought = text.Trim().ToUpperInvariant();
        var places = byName.TryGetValue(sought, out var exact) ? exact
            : sought.Length < ShortestPart ? []
            : [.. byName.Where(n => n.Key.Contains(sought, StringComparison.Ordinal)).SelectMany(n => n.Value).Distinct().Order()];
        return [.. places.Select(place => new LimitMatch(limits[place], limits[place].Substance, MatchedAs.Itself))];
    }

    private FrozenDictionary<string, int[]> Index(Func<Limit, IEnumerable<string>> keys) => limits
        .SelectMany((limit, place) => keys(limit).Distinct(StringComparer.Ordinal).Select(key => (key, place)))
        .GroupBy(p => p.key, p => p.place, StringComparer.Ordinal)
        .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);

    private static IEnumerable<string> Identities(RegulatedMember member) =>
        new[] { member.Cas, member.InciName?.ToUpperInvariant(), member.Ingredient is { } id ? NamedContent.IdKey(id) : null }.OfType<string>();
}
