namespace Materia.Data.Rows;

/// <summary>The import of the inventory of names that is in the database; one row at most.</summary>
internal sealed class InventoryImportRow
{
    /// <summary>The only key.</summary>
    public const int Only = 1;

    /// <summary>The key.</summary>
    public int Id { get; init; } = Only;

    /// <summary>The checksum of the entries.</summary>
    public required string Checksum { get; init; }

    /// <summary>When it was imported.</summary>
    public required DateTimeOffset Imported { get; init; }

    /// <summary>How many entries it has.</summary>
    public required int EntryCount { get; init; }
}
