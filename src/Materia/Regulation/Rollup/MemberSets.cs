using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Contents;

namespace Materia.Regulation.Rollup;

/// <summary>
/// What the limits and allergens of a release count, each distinct set once, and what of it each ingredient holds. Worked out once
/// for a release, so that an evaluation only multiplies and adds.
/// </summary>
internal sealed class MemberSets
{
    private static readonly ConditionalWeakTable<Release, MemberSets> Known = [];

    private readonly ConditionalWeakTable<Ingredient, SetMatch[]> matches = [];
    private readonly List<MemberSet> sets = [];
    private readonly FrozenDictionary<string, int[]> byKey;
    private readonly FrozenDictionary<object, int> byRule;

    private MemberSets(Release release)
    {
        Release = release;
        var content = release.Content;
        var fragrance = content.Allergens.SelectMany(a => a.Members)
            .Concat(content.Limits.Where(l => l.Kind is LimitKind.Fragrance or LimitKind.Phototoxic).SelectMany(l => l.Members))
            .Select(m => m.Cas).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var ordinals = new Dictionary<string, int>(StringComparer.Ordinal);

        // Limits that add up as ratios name whole oils, of which a formula says whether they are in it.
        OfLimits = [.. content.Limits.Select(l => Add(l.Members, l.ExceptIngredients, l.RatioGroup is null && l.Members.Any(m => m.Cas is { } cas && fragrance.Contains(cas)), ordinals))];
        OfAllergens = [.. content.Allergens.Select(a => Add(a.Members, [], !a.NaturalExtract, ordinals))];
        byRule = content.Limits.Zip(OfLimits, (l, s) => KeyValuePair.Create<object, int>(l, s))
            .Concat(content.Allergens.Zip(OfAllergens, (a, s) => KeyValuePair.Create<object, int>(a, s)))
            .ToFrozenDictionary(ReferenceEqualityComparer.Instance);
        byKey = sets
            .SelectMany(s => s.Members.SelectMany(ContentKeys.Of).Distinct(StringComparer.Ordinal).Select(key => (Key: key, s.Ordinal)))
            .GroupBy(p => p.Key, p => p.Ordinal, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
    }

    /// <summary>The ordinal of the set of each limit, in the order of the table.</summary>
    public int[] OfLimits { get; }

    /// <summary>The ordinal of the set of each allergen, in the order of the table.</summary>
    public int[] OfAllergens { get; }

    /// <summary>The sets.</summary>
    public IReadOnlyList<MemberSet> Sets => sets;

    private Release Release { get; }

    /// <summary>The sets of a release, made at the first call.</summary>
    public static MemberSets Of(Release release) => Known.GetValue(release, r => new MemberSets(r));

    /// <summary>The ordinal of the set of a limit of the release.</summary>
    public int Of(Limit limit) => byRule[limit];

    /// <summary>The ordinal of the set of an allergen of the release.</summary>
    public int Of(Allergen allergen) => byRule[allergen];

    /// <summary>What an ingredient holds of each set that names something in it.</summary>
    public SetMatch[] Matches(Ingredient ingredient) =>
        matches.TryGetValue(ingredient, out var known) ? known : matches.GetValue(ingredient, Match);

    private int Add(IReadOnlyList<RegulatedMember> members, IReadOnlyList<string> except, bool mayBeUnstated, Dictionary<string, int> ordinals)
    {
        var key = string.Join('\n', members.Select(m => FormattableString.Invariant($"{m.Cas}\t{m.InciName}\t{m.Ingredient}\t{m.Factor}")).Concat(except).Append(mayBeUnstated ? "open" : "closed"));
        if (!ordinals.TryGetValue(key, out var ordinal))
        {
            ordinals.Add(key, ordinal = sets.Count);
            sets.Add(new MemberSet(ordinal, members, except, mayBeUnstated));
        }

        return ordinal;
    }

    private SetMatch[] Match(Ingredient ingredient)
    {
        var contents = IngredientContents.Of(ingredient, Release);
        var found = contents.Shares.SelectMany(s => s.Keys).Distinct(StringComparer.Ordinal).SelectMany(key => byKey.GetValueOrDefault(key, [])).Distinct().Order();
        return [.. found.Where(s => !sets[s].Except.Contains(ingredient.Id, StringComparer.Ordinal)).Select(s => Match(sets[s], contents))];
    }

    private static SetMatch Match(MemberSet set, IngredientContents contents)
    {
        var share = Amount.None;
        decimal most = 0;
        var counted = new HashSet<ContentShare>(ReferenceEqualityComparer.Instance);
        foreach (var member in set.Members)
        {
            foreach (var content in contents.Shares.Where(s => ContentKeys.Of(member).Any(k => s.Keys.Contains(k, StringComparer.Ordinal))))
            {
                if (counted.Add(content))
                {
                    share += content.Share * member.Factor;
                    most += content.Most * member.Factor;
                }
            }
        }

        return new SetMatch(set.Ordinal, share, Math.Max(0, most - share.High));
    }
}

/// <summary>What a material holds of a set.</summary>
/// <param name="Set">The ordinal of the set.</param>
/// <param name="Share">The share of the material that counts, as it is stated [%].</param>
/// <param name="Open">The share that it may hold above that, where no upper end is stated [%].</param>
internal readonly record struct SetMatch(int Set, Amount Share, decimal Open);
