using Materia.Catalogue;
using Materia.Catalogue.Inventory;

namespace Materia.Data.Rows;

/// <summary>An entry of the inventory of names.</summary>
internal sealed class InventoryEntryRow
{
    private const char BetweenFunctions = ' ';

    public InventoryEntryRow(int ordinal, InventoryEntry entry)
    {
        Ordinal = ordinal;
        InciName = entry.InciName;
        InnName = entry.InnName;
        PharmacopoeiaName = entry.PharmacopoeiaName;
        Functions = string.Join(BetweenFunctions, entry.Functions);
        Description = entry.Description;
        Restriction = entry.Restriction;
    }

    /// <summary>For the reader of the database.</summary>
    private InventoryEntryRow()
    {
    }

    /// <summary>The place in the ordinal order of the names, from 0.</summary>
    public int Ordinal { get; private init; }

    /// <inheritdoc cref="InventoryEntry.InciName"/>
    public string InciName { get; private init; } = "";

    /// <inheritdoc cref="InventoryEntry.InnName"/>
    public string? InnName { get; private init; }

    /// <inheritdoc cref="InventoryEntry.PharmacopoeiaName"/>
    public string? PharmacopoeiaName { get; private init; }

    /// <summary>The functions, parted by spaces; they are words in kebab case.</summary>
    public string Functions { get; private init; } = "";

    /// <inheritdoc cref="InventoryEntry.Description"/>
    public string? Description { get; private init; }

    /// <inheritdoc cref="InventoryEntry.Restriction"/>
    public string? Restriction { get; private init; }

    /// <summary>The record of this row and its numbers.</summary>
    /// <param name="numbers">The entry's numbers, in their order.</param>
    /// <param name="functions">Lists of functions that were read already, each kept once.</param>
    public InventoryEntry ToRecord(IEnumerable<InventoryNumberRow> numbers, Dictionary<string, IReadOnlyList<string>> functions)
    {
        var all = numbers.ToList();
        if (!functions.TryGetValue(Functions, out var list))
        {
            functions.Add(Functions, list = Functions.Split(BetweenFunctions, StringSplitOptions.RemoveEmptyEntries));
        }

        return new InventoryEntry
        {
            InciName = InciName,
            InnName = InnName,
            PharmacopoeiaName = PharmacopoeiaName,
            CasNumbers = [.. all.Where(n => n.Registry == Registry.Cas).Select(n => n.Number)],
            EcNumbers = [.. all.Where(n => n.Registry == Registry.Ec).Select(n => n.Number)],
            Functions = list,
            Description = Description,
            Restriction = Restriction,
        };
    }
}
