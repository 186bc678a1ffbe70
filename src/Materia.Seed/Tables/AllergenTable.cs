using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Seed.Tables;

/// <summary>The table of fragrance allergens; what counts towards each stands in <see cref="MembersPath"/>.</summary>
internal static class AllergenTable
{
    /// <summary>Its path in the seed directory.</summary>
    public const string Path = "tables/allergens.csv";

    /// <summary>The path of the table of members.</summary>
    public const string MembersPath = "tables/allergen-members.csv";

    /// <summary>The column of that table that names the allergen.</summary>
    public const string Owner = "allergen";

    /// <summary>Its columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "id", "declaration_name", "natural_extract", "leave_on_threshold", "rinse_off_threshold", "new_products_until",
        "old_stock_until", "evidence", "source", "locator", "check_in", "note",
    ];

    /// <summary>Makes the record of a row, without its members.</summary>
    public static Allergen Row(TableRow row) => new()
    {
        Id = row.Required("id"),
        DeclarationName = row.Required("declaration_name"),
        Members = [],
        NaturalExtract = row.Flag("natural_extract"),
        LeaveOnThreshold = row.RequiredNumber("leave_on_threshold"),
        RinseOffThreshold = row.RequiredNumber("rinse_off_threshold"),
        NewProductsUntil = row.Date("new_products_until"),
        OldStockUntil = row.Date("old_stock_until"),
        Evidence = row.Word<Evidence>("evidence"),
        Source = row.Required("source"),
        Locator = row.Text("locator"),
        CheckIn = row.Text("check_in"),
        Note = row.Text("note"),
    };
}
