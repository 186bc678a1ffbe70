using System.Collections.Frozen;
using Materia.Catalogue.Needs;

namespace Materia.Catalogue;

/// <summary>One numbered, immutable state of the catalogue, held in memory. A request works on one release from start to end.</summary>
public sealed class Release
{
    private readonly FrozenDictionary<string, Ingredient> ingredients;
    private readonly FrozenDictionary<string, string> formerIds;
    private readonly FrozenDictionary<string, Source> sources;
    private readonly FrozenDictionary<string, FattyAcid> fattyAcids;
    private readonly FrozenDictionary<string, ProductUse> uses;
    private readonly FrozenDictionary<string, SubstitutionGroup> substitutionGroups;
    private readonly FrozenDictionary<string, Need> needs;

    /// <summary>Makes a release of <paramref name="content"/>.</summary>
    /// <param name="number">The number; releases count up from 1.</param>
    /// <param name="published">When it was published.</param>
    /// <param name="checksum">The content's checksum, see <see cref="CatalogueJson.Checksum"/>.</param>
    /// <param name="content">What it holds.</param>
    public Release(int number, DateTimeOffset published, string checksum, CatalogueContent content)
    {
        Number = number;
        Published = published;
        Checksum = checksum;
        Content = content;
        ingredients = content.Ingredients.ToFrozenDictionary(i => i.Id, StringComparer.Ordinal);
        formerIds = content.Ingredients
            .SelectMany(i => i.FormerIds.Select(former => (former, i.Id)))
            .ToFrozenDictionary(p => p.former, p => p.Id, StringComparer.Ordinal);
        sources = content.Sources.ToFrozenDictionary(s => s.Id, StringComparer.Ordinal);
        fattyAcids = content.FattyAcids.ToFrozenDictionary(a => a.Symbol, StringComparer.Ordinal);
        uses = content.Uses.ToFrozenDictionary(u => u.Id, StringComparer.Ordinal);
        needs = content.Needs.ToFrozenDictionary(n => n.Id, StringComparer.Ordinal);
        substitutionGroups = content.SubstitutionGroups.ToFrozenDictionary(g => g.Id, StringComparer.Ordinal);
    }

    /// <summary>The number; releases count up from 1.</summary>
    public int Number { get; }

    /// <summary>When it was published.</summary>
    public DateTimeOffset Published { get; }

    /// <summary>The content's checksum.</summary>
    public string Checksum { get; }

    /// <summary>What it holds.</summary>
    public CatalogueContent Content { get; }

    /// <summary>The ingredient with this id, or <see langword="null"/>; former ids are not followed.</summary>
    public Ingredient? FindIngredient(string id) => ingredients.GetValueOrDefault(id);

    /// <summary>The present id of an ingredient once called <paramref name="formerId"/>, or <see langword="null"/>.</summary>
    public string? FindPresentId(string formerId) => formerIds.GetValueOrDefault(formerId);

    /// <summary>The source with this key, or <see langword="null"/>.</summary>
    public Source? FindSource(string id) => sources.GetValueOrDefault(id);

    /// <summary>The fatty acid or alcohol with this symbol, or <see langword="null"/>.</summary>
    public FattyAcid? FindFattyAcid(string symbol) => fattyAcids.GetValueOrDefault(symbol);

    /// <summary>The product type with this key, or <see langword="null"/>.</summary>
    public ProductUse? FindUse(string id) => uses.GetValueOrDefault(id);

    /// <summary>The need with this key, or <see langword="null"/>.</summary>
    public Need? FindNeed(string id) => needs.GetValueOrDefault(id);

    /// <summary>The substitution group with this key, or <see langword="null"/>.</summary>
    public SubstitutionGroup? FindSubstitutionGroup(string id) => substitutionGroups.GetValueOrDefault(id);
}
