using Materia.Catalogue;
using Materia.Catalogue.Inventory;
using Materia.Search.Inventory;

namespace Materia.Api.Serving;

/// <summary>The imported inventory of names with its index and its links to the curated ingredients of one release.</summary>
public sealed class ServedInventory
{
    /// <summary>Builds index and links.</summary>
    public ServedInventory(NameInventory inventory, Release release)
    {
        Inventory = inventory;
        Index = InventoryIndex.Build(inventory);
        Links = new CuratedLinks(release);
    }

    /// <summary>The entries.</summary>
    public NameInventory Inventory { get; }

    /// <summary>Their index.</summary>
    public InventoryIndex Index { get; }

    /// <summary>Which ingredients they stand for.</summary>
    public CuratedLinks Links { get; }
}
