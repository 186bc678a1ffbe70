using Materia.Catalogue;

namespace Materia.Seed.Tables;

/// <summary>The table of substitution groups.</summary>
internal static class SubstitutionGroupTable
{
    /// <summary>Its path in the seed directory.</summary>
    public const string Path = "tables/substitution-groups.csv";

    /// <summary>Its columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        ["id", "name", "description", "evidence", "source", "locator", "check_in", "note"];

    /// <summary>Makes the record of a row.</summary>
    public static SubstitutionGroup Row(TableRow row) => new()
    {
        Id = row.Required("id"),
        Name = row.Required("name"),
        Description = row.Required("description"),
        Evidence = row.Word<Evidence>("evidence"),
        Source = row.Required("source"),
        Locator = row.Text("locator"),
        CheckIn = row.Text("check_in"),
        Note = row.Text("note"),
    };
}
