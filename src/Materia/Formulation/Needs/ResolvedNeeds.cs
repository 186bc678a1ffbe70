using System.Text.Json.Serialization;
using Materia.Catalogue;
using Materia.Catalogue.Needs;
using Materia.Formulation.Scopes;

namespace Materia.Formulation.Needs;

/// <summary>What follows from several needs together: targets to adjust, preferences, exclusions, and where they contradict each other. No verdict, no medical advice.</summary>
public sealed record ResolvedNeeds
{
    /// <summary>The targets. Ranges that several needs set for one property are cut to what they have in common; where that is nothing, each stays and a contradiction names them.</summary>
    public required IReadOnlyList<NeedTarget> Targets { get; init; }

    /// <summary>What to favour and what to hold back on.</summary>
    public required IReadOnlyList<NeedPreference> Preferences { get; init; }

    /// <summary>What to leave out.</summary>
    public required IReadOnlyList<NeedExclusion> Exclusions { get; init; }

    /// <summary>Needs that cannot all be met.</summary>
    public required IReadOnlyList<NeedContradiction> Contradictions { get; init; }

    /// <summary>What to know.</summary>
    public required IReadOnlyList<NeedReason> Cautions { get; init; }

    /// <summary>Keys that are no need of the release.</summary>
    public required IReadOnlyList<string> Unknown { get; init; }

    /// <summary>Whether an exclusion holds <paramref name="ingredient"/>.</summary>
    public bool Excludes(Ingredient ingredient) => Exclusions.Any(e => e.Scope.Holds(ingredient));

    /// <summary>Puts needs together; a key that stands twice counts once.</summary>
    /// <param name="ids">Keys of needs.</param>
    /// <param name="release">The release that holds them.</param>
    public static ResolvedNeeds Of(IReadOnlyList<string> ids, Release release)
    {
        ArgumentNullException.ThrowIfNull(ids);
        ArgumentNullException.ThrowIfNull(release);
        var distinct = ids.Distinct(StringComparer.Ordinal).ToList();
        var needs = distinct.Select(release.FindNeed).OfType<Need>().ToList();
        var (targets, unmet) = NeedTargets.Of(needs);
        var preferences = Preferred(needs);
        var exclusions = Scoped(needs, NeedEffectKind.Exclude).Select(g => new NeedExclusion(g.Scope, g.Because)).ToList();
        return new()
        {
            Targets = targets,
            Preferences = preferences,
            Exclusions = exclusions,
            Contradictions = [.. NeedContradictions.Opposed(needs), .. unmet, .. NeedContradictions.OfScopes(preferences, exclusions)],
            Cautions = [.. Effects(needs, NeedEffectKind.Caution).Select(e => NeedReason.Of(e.Need, e.Effect))],
            Unknown = [.. distinct.Where(id => release.FindNeed(id) is null)],
        };
    }

    internal static IEnumerable<(Need Need, NeedEffect Effect)> Effects(IEnumerable<Need> needs, NeedEffectKind kind) =>
        needs.SelectMany(n => n.Effects.Where(e => e.Kind == kind).Select(e => (n, e)));

    private static List<NeedPreference> Preferred(List<Need> needs) =>
    [
        .. Scoped(needs, NeedEffectKind.Prefer).Select(g => new NeedPreference(g.Scope, Favoured: true, g.Because)),
        .. Scoped(needs, NeedEffectKind.Avoid).Select(g => new NeedPreference(g.Scope, Favoured: false, g.Because)),
    ];

    private static IEnumerable<(IngredientScope Scope, IReadOnlyList<NeedReason> Because)> Scoped(List<Need> needs, NeedEffectKind kind) =>
        Effects(needs, kind)
            .GroupBy(e => e.Effect.Scope!, StringComparer.Ordinal)
            .Select(g => (
                IngredientScope.TryParse(g.Key, out var scope) ? scope! : throw new InvalidOperationException($"The release holds the scope {g.Key}, which the seed check refuses."),
                (IReadOnlyList<NeedReason>)[.. g.Select(e => NeedReason.Of(e.Need, e.Effect))]));
}

/// <summary>A target that follows from needs.</summary>
/// <param name="Property">The property.</param>
/// <param name="Temperature">The temperature [Cel], where it depends on one.</param>
/// <param name="Acid">The symbol of the acid, for a fatty acid.</param>
/// <param name="Low">The least value; open where <see langword="null"/>.</param>
/// <param name="High">The greatest value; open where <see langword="null"/>.</param>
/// <param name="Weight">How much it counts [1].</param>
/// <param name="Because">The needs with their reasons.</param>
public sealed record NeedTarget(
    TargetProperty Property, decimal? Temperature, string? Acid, double? Low, double? High, double Weight, IReadOnlyList<NeedReason> Because);

/// <summary>Ingredients to favour or to hold back on.</summary>
/// <param name="Scope">Which.</param>
/// <param name="Favoured">True to favour, false to hold back on.</param>
/// <param name="Because">The needs with their reasons.</param>
public sealed record NeedPreference([property: JsonIgnore] IngredientScope Scope, bool Favoured, IReadOnlyList<NeedReason> Because)
{
    /// <summary>The word of the set, such as <c>group:soft-butters</c>.</summary>
    [JsonPropertyName("scope")]
    public string Word => Scope.Text;
}

/// <summary>Ingredients to leave out.</summary>
/// <param name="Scope">Which.</param>
/// <param name="Because">The needs with their reasons.</param>
public sealed record NeedExclusion([property: JsonIgnore] IngredientScope Scope, IReadOnlyList<NeedReason> Because)
{
    /// <summary>The word of the set, such as <c>allergen:tree-nut</c>.</summary>
    [JsonPropertyName("scope")]
    public string Word => Scope.Text;
}

/// <summary>Needs that cannot all be met.</summary>
/// <param name="Needs">Their keys.</param>
/// <param name="Message">What is at odds, and what to do.</param>
public sealed record NeedContradiction(IReadOnlyList<string> Needs, string Message);

/// <summary>Why something follows from a need.</summary>
/// <param name="Need">The key of the need.</param>
/// <param name="Reason">The sentence.</param>
/// <param name="Evidence">The grade.</param>
/// <param name="Source">The key of the source.</param>
/// <param name="Locator">Where in the source.</param>
public sealed record NeedReason(string Need, string Reason, Evidence Evidence, string Source, string? Locator)
{
    internal static NeedReason Of(Need need, NeedEffect effect) => new(need.Id, effect.Reason, effect.Evidence, effect.Source, effect.Locator);
}
