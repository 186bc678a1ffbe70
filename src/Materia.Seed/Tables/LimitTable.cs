using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Seed.Tables;

/// <summary>The table of limits; what counts towards each stands in <see cref="MembersPath"/>.</summary>
internal static class LimitTable
{
    /// <summary>Its path in the seed directory.</summary>
    public const string Path = "tables/limits.csv";

    /// <summary>The path of the table of members.</summary>
    public const string MembersPath = "tables/limit-members.csv";

    /// <summary>The column of that table that names the limit.</summary>
    public const string Owner = "limit";

    /// <summary>Its columns; lists are parted by semicolons.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "id", "substance", "authority", "kind", "exposure", "sites", "uses", "except_uses", "ifra_categories", "scope_text",
        "max_percent", "below", "expressed_as", "ratio_group", "except_ingredients", "conditions", "warning", "warning_above",
        "from", "old_stock_until", "evidence", "source", "locator", "check_in", "note",
    ];

    /// <summary>Makes the record of a row, without its members.</summary>
    public static Limit Row(TableRow row) => new()
    {
        Id = row.Required("id"),
        Substance = row.Required("substance"),
        Authority = row.Word<Authority>("authority"),
        Kind = row.Word<LimitKind>("kind"),
        Members = [],
        ExceptIngredients = row.List("except_ingredients"),
        Scope = Scope(row),
        ScopeText = row.Required("scope_text"),
        MaxPercent = row.Number("max_percent"),
        Below = row.Flag("below"),
        ExpressedAs = row.Text("expressed_as"),
        RatioGroup = row.Text("ratio_group"),
        Conditions = row.Text("conditions"),
        Warning = row.Text("warning"),
        WarningAbove = row.Number("warning_above"),
        From = row.Date("from"),
        OldStockUntil = row.Date("old_stock_until"),
        Evidence = row.Word<Evidence>("evidence"),
        Source = row.Required("source"),
        Locator = row.Text("locator"),
        CheckIn = row.Text("check_in"),
        Note = row.Text("note"),
    };

    private static ProductScope Scope(TableRow row) => new()
    {
        Exposure = row.Text("exposure") is null ? null : row.Word<Exposure>("exposure"),
        Sites = row.Words<BodySite>("sites"),
        Uses = row.List("uses"),
        ExceptUses = row.List("except_uses"),
        IfraCategories = row.List("ifra_categories"),
    };
}
