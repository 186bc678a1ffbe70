using Materia.Catalogue;

namespace Materia.Seed.Tables;

/// <summary>The table of fatty acids and alcohols.</summary>
internal static class FattyAcidTable
{
    /// <summary>Its path in the seed directory.</summary>
    public const string Path = "tables/fatty-acids.csv";

    /// <summary>Its columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "symbol", "name", "systematic_name", "cas", "carbons", "double_bonds", "hydroxyls", "alcohol", "molar_mass",
        "melting_point", "evidence", "source", "locator", "check_in", "note",
    ];

    /// <summary>Makes the record of a row.</summary>
    public static FattyAcid Row(TableRow row) => new()
    {
        Symbol = row.Required("symbol"),
        Name = row.Required("name"),
        SystematicName = row.Text("systematic_name"),
        Cas = row.Text("cas"),
        Carbons = row.Whole("carbons"),
        DoubleBonds = row.Whole("double_bonds"),
        Hydroxyls = row.Whole("hydroxyls", optional: true),
        Alcohol = row.Flag("alcohol"),
        MolarMass = row.RequiredNumber("molar_mass"),
        MeltingPoint = row.Number("melting_point"),
        Evidence = row.Word<Evidence>("evidence"),
        Source = row.Required("source"),
        Locator = row.Text("locator"),
        CheckIn = row.Text("check_in"),
        Note = row.Text("note"),
    };
}
