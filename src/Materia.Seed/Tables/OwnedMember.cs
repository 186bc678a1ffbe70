using Materia.Catalogue.Regulated;

namespace Materia.Seed.Tables;

/// <summary>A row of a table of members: what counts towards a limit or an allergen of another table.</summary>
/// <param name="Owner">The key of the limit or the allergen.</param>
/// <param name="Member">What counts.</param>
internal sealed record OwnedMember(string Owner, RegulatedMember Member)
{
    /// <summary>The columns of such a table, whose first names the owner.</summary>
    /// <param name="owner">The name of the first column.</param>
    public static IReadOnlyList<string> Columns(string owner) => [owner, "name", "cas", "inci_name", "ingredient", "factor"];

    /// <summary>Makes the record of a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="owner">The name of the first column.</param>
    public static OwnedMember Row(TableRow row, string owner) => new(row.Required(owner), new RegulatedMember
    {
        Name = row.Required("name"),
        Cas = row.Text("cas"),
        InciName = row.Text("inci_name"),
        Ingredient = row.Text("ingredient"),
        Factor = row.Number("factor") ?? 1,
    });

    /// <summary>The members by their owner, each list in the order of the table.</summary>
    public static ILookup<string, RegulatedMember> ByOwner(IEnumerable<OwnedMember> members) =>
        members.ToLookup(m => m.Owner, m => m.Member, StringComparer.Ordinal);
}
