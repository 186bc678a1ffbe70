using Materia.Catalogue;
using Materia.Catalogue.Inventory;

namespace Materia.Search.Indexing;

/// <summary>A record as the index of names sees it: its ids, and its names and numbers.</summary>
/// <param name="Id">The id.</param>
/// <param name="FormerIds">Ids that once named it.</param>
/// <param name="Names">Its names and numbers, the first of which heads it.</param>
internal sealed record NamedRecord(string Id, IReadOnlyList<string> FormerIds, IReadOnlyList<(string Text, MatchedNameKind Kind, string? Language)> Names)
{
    /// <summary>An ingredient of the catalogue.</summary>
    public static NamedRecord Of(Ingredient ingredient) => new(
        ingredient.Id,
        ingredient.FormerIds,
        [
            .. ingredient.Names.Select(n => (n.Text, Kind(n.Kind), n.Language)),
            .. ingredient.Numbers.Select(n => (n.Number, n.Registry == Registry.Cas ? MatchedNameKind.Cas : MatchedNameKind.Ec, (string?)null)),
        ]);

    /// <summary>An entry of the inventory of names; its INCI name is its id.</summary>
    public static NamedRecord Of(InventoryEntry entry)
    {
        var names = new List<(string, MatchedNameKind, string?)> { (entry.InciName, MatchedNameKind.Inci, null) };
        AddName(entry.InnName, MatchedNameKind.Chemical);
        AddName(entry.PharmacopoeiaName, MatchedNameKind.Pharmacopoeia);
        names.AddRange(entry.CasNumbers.Select(n => (n, MatchedNameKind.Cas, (string?)null)));
        names.AddRange(entry.EcNumbers.Select(n => (n, MatchedNameKind.Ec, (string?)null)));
        return new NamedRecord(entry.InciName, [], names);

        void AddName(string? name, MatchedNameKind kind)
        {
            if (name is not null && !string.Equals(name, entry.InciName, StringComparison.OrdinalIgnoreCase))
            {
                names.Add((name, kind, null));
            }
        }
    }

    private static MatchedNameKind Kind(NameKind kind) => kind switch
    {
        NameKind.Common => MatchedNameKind.Common,
        NameKind.Inci => MatchedNameKind.Inci,
        NameKind.Botanical => MatchedNameKind.Botanical,
        NameKind.Synonym => MatchedNameKind.Synonym,
        NameKind.Pharmacopoeia => MatchedNameKind.Pharmacopoeia,
        NameKind.Chemical => MatchedNameKind.Chemical,
        NameKind.Code => MatchedNameKind.Code,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A sort of name that the index does not know."),
    };
}
