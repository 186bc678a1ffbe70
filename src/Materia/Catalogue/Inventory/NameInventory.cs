namespace Materia.Catalogue.Inventory;

/// <summary>The imported inventory of ingredient names; immutable.</summary>
public sealed class NameInventory
{
    /// <summary>Makes an inventory of <paramref name="entries"/>.</summary>
    /// <param name="entries">The entries, each INCI name once, in ordinal order of the names.</param>
    /// <param name="checksum">The checksum of the entries, see <see cref="CatalogueJson.InventoryChecksum"/>.</param>
    /// <param name="imported">When it was imported.</param>
    public NameInventory(IReadOnlyList<InventoryEntry> entries, string checksum, DateTimeOffset imported)
    {
        Entries = entries;
        Checksum = checksum;
        Imported = imported;
    }

    /// <summary>The entries, in ordinal order of their INCI names.</summary>
    public IReadOnlyList<InventoryEntry> Entries { get; }

    /// <summary>The checksum of the entries: equal entries, equal checksum.</summary>
    public string Checksum { get; }

    /// <summary>When it was imported.</summary>
    public DateTimeOffset Imported { get; }
}
