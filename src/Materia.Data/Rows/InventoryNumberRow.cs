using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A CAS or EC number of an entry of the inventory of names.</summary>
internal sealed class InventoryNumberRow
{
    /// <summary>The ordinal of the entry.</summary>
    public required int Entry { get; init; }

    /// <summary>The registry.</summary>
    public required Registry Registry { get; init; }

    /// <summary>The place among the entry's numbers of the same registry, from 0.</summary>
    public required int Ordinal { get; init; }

    /// <summary>The number.</summary>
    public required string Number { get; init; }
}
