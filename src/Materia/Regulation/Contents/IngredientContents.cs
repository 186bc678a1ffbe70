using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Contents;

/// <summary>
/// All that a material consists of, as far as it is known: itself, its parts and theirs, and the constituents of its oils; with how
/// much of it nobody has accounted for.
/// </summary>
internal sealed class IngredientContents
{
    private static readonly ConditionalWeakTable<Ingredient, IngredientContents> Known = [];

    private readonly FrozenDictionary<string, int[]> places;

    internal IngredientContents(IReadOnlyList<ContentShare> shares, decimal unaccounted, bool isMixtureOfUnknownParts)
    {
        Shares = shares;
        Unaccounted = unaccounted;
        IsMixtureOfUnknownParts = isMixtureOfUnknownParts;
        places = shares
            .SelectMany((share, place) => Keys(share).Distinct(StringComparer.Ordinal).Select(key => (Key: key, Place: place)))
            .GroupBy(p => p.Key, p => p.Place, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
    }

    /// <summary>The material itself first, then everything in it.</summary>
    public IReadOnlyList<ContentShare> Shares { get; }

    /// <summary>The share that may be fragrance substances which no statement names [%]; 0 for what holds none.</summary>
    public decimal Unaccounted { get; }

    /// <summary>True for a mixture whose one name lists several ingredients and whose shares are not known: anything may be in it.</summary>
    public bool IsMixtureOfUnknownParts { get; }

    /// <summary>Every key under which something in the material may be named.</summary>
    public IEnumerable<string> AllKeys => places.Keys;

    /// <summary>The contents of a material, worked out once for as long as its release lives.</summary>
    public static IngredientContents Of(Ingredient ingredient, Release release) =>
        Known.TryGetValue(ingredient, out var known) ? known : Known.GetValue(ingredient, i => ContentReading.Read(i, release));

    /// <summary>The places in <see cref="Shares"/> of what a member means.</summary>
    public ReadOnlySpan<int> Places(string key) => places.TryGetValue(key, out var found) ? found : [];

    /// <summary>The keys by which a member is looked up. Registries, names and ids never look alike.</summary>
    public static IEnumerable<string> Keys(RegulatedMember member)
    {
        if (member.Cas is { } cas)
        {
            yield return cas;
        }

        if (member.InciName is { } inci)
        {
            yield return inci.ToUpperInvariant();
        }

        if (member.Ingredient is { } id)
        {
            yield return IdKey(id);
        }
    }

    private static IEnumerable<string> Keys(ContentShare share) =>
        share.CasNumbers.Concat(share.InciNames).Concat(share.Ingredient is { } id ? [IdKey(id)] : []);

    private static string IdKey(string id) => "id:" + id;
}
