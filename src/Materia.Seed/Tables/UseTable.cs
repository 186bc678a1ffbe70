using Materia.Catalogue;

namespace Materia.Seed.Tables;

/// <summary>The table of product types.</summary>
internal static class UseTable
{
    /// <summary>Its path in the seed directory.</summary>
    public const string Path = "tables/uses.csv";

    /// <summary>Its columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        ["id", "name", "exposure", "site", "ifra_category", "caution", "description", "evidence", "source", "locator", "check_in", "note"];

    /// <summary>Makes the record of a row.</summary>
    public static ProductUse Row(TableRow row) => new()
    {
        Id = row.Required("id"),
        Name = row.Required("name"),
        Exposure = row.Word<Exposure>("exposure"),
        Site = row.Word<BodySite>("site"),
        IfraCategory = row.Text("ifra_category"),
        Caution = row.Text("caution"),
        Description = row.Required("description"),
        Evidence = row.Word<Evidence>("evidence"),
        Source = row.Required("source"),
        Locator = row.Text("locator"),
        CheckIn = row.Text("check_in"),
        Note = row.Text("note"),
    };
}
