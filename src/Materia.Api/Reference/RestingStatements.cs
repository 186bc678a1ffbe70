using System.Collections.Frozen;
using Materia.Catalogue;
using Materia.Formulation;

namespace Materia.Api.Reference;

/// <summary>What rests on each source of a release, gathered in one pass over its statements.</summary>
public sealed class RestingStatements
{
    private readonly FrozenDictionary<string, SourceRecord> records;

    private RestingStatements(IEnumerable<SourceRecord> records) =>
        this.records = records.ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);

    /// <summary>The sources by key, without the lists of ingredients.</summary>
    public required IReadOnlyList<SourceRecord> Listed { get; init; }

    /// <summary>Gathers what rests on the sources of <paramref name="release"/>.</summary>
    public static RestingStatements Of(Release release)
    {
        var content = release.Content;
        var tables = content.FattyAcids.Concat<Statement>(content.Uses).Concat(content.SubstitutionGroups).Concat(content.Limits).Concat(content.Allergens).Concat(content.Needs).Concat(content.Needs.SelectMany(n => n.Effects));
        var stated = content.Ingredients
            .SelectMany(i => i.Statements().Select(s => (s.Source, s.Evidence, Ingredient: (Ingredient?)i)))
            .Concat(tables.Select(s => (s.Source, s.Evidence, Ingredient: (Ingredient?)null)))
            .ToLookup(s => s.Source, s => (s.Evidence, s.Ingredient), StringComparer.Ordinal);
        var methods = AllMethods.ById.Values
            .SelectMany(m => m.Sources.Select(source => (source, m.Id)))
            .ToLookup(m => m.source, m => m.Id, StringComparer.Ordinal);
        var records = content.Sources.Select(source => SourceRecord.Of(source, stated[source.Id], methods[source.Id])).ToList();
        return new RestingStatements(records) { Listed = records.ConvertAll(r => r with { Ingredients = [] }) };
    }

    /// <summary>The source with this key and the ingredients that rest on it, or <see langword="null"/>.</summary>
    public SourceRecord? Find(string id) => records.GetValueOrDefault(id);
}
