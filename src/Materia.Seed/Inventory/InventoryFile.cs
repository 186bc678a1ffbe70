using Materia.Catalogue.Inventory;

namespace Materia.Seed.Inventory;

/// <summary>What an inventory file holds.</summary>
public sealed record InventoryFile
{
    /// <summary>The entries, each INCI name once, in ordinal order; <see langword="null"/> when the file could not be taken for an inventory.</summary>
    public IReadOnlyList<InventoryEntry>? Entries { get; init; }

    /// <summary>Everything that was wrong, in the order of the lines. With entries, all of it was put right or left out.</summary>
    public required IReadOnlyList<InventoryFault> Faults { get; init; }

    /// <summary>How many rows there were below the header.</summary>
    public int Rows { get; init; }
}
