using Materia.Catalogue.Inventory;

namespace Materia.Seed.Inventory;

/// <summary>Gathers the entries of an inventory file; a name that comes again is merged with its first row.</summary>
internal sealed class InventoryEntries(List<InventoryFault> faults)
{
    private readonly Dictionary<string, (int Line, InventoryEntry Entry)> byName = new(StringComparer.OrdinalIgnoreCase);

    // The functions of most entries repeat, so each list of them is kept once.
    private readonly Dictionary<string, IReadOnlyList<string>> functions = new(StringComparer.Ordinal);

    /// <summary>How many entries there are.</summary>
    public int Count => byName.Count;

    /// <summary>Takes a row.</summary>
    public void Add(int line, string[] row, InventoryHeader header)
    {
        var name = header.Text(row, InventoryColumn.InciName);
        if (name.Length == 0)
        {
            faults.Add(new(line, "the row has no INCI name; it was left out"));
            return;
        }

        void Fault(string message) => faults.Add(new(line, $"{name}: {message}"));
        var entry = new InventoryEntry
        {
            InciName = name,
            InnName = Optional(header.Text(row, InventoryColumn.InnName)),
            PharmacopoeiaName = Optional(header.Text(row, InventoryColumn.PharmacopoeiaName)),
            CasNumbers = InventoryNumbers.Cas(header.Text(row, InventoryColumn.Cas), Fault),
            EcNumbers = InventoryNumbers.Ec(header.Text(row, InventoryColumn.Ec), Fault),
            Description = Optional(header.Text(row, InventoryColumn.Description)),
            Restriction = Optional(header.Text(row, InventoryColumn.Restriction)),
            Functions = Functions(header.Text(row, InventoryColumn.Function)),
        };
        if (!byName.TryGetValue(name, out var first))
        {
            byName.Add(name, (line, entry));
            return;
        }

        var merged = Merged(first.Entry, entry);
        Fault($"the name stands in line {first.Line} too; " + (Same(merged, first.Entry) ? "this row adds nothing" : "their numbers and functions were put together"));
        byName[name] = (first.Line, merged);
    }

    /// <summary>All entries, in ordinal order of the names.</summary>
    public IReadOnlyList<InventoryEntry> InOrder() => [.. byName.Values.Select(e => e.Entry).OrderBy(e => e.InciName, StringComparer.Ordinal)];

    private static InventoryEntry Merged(InventoryEntry first, InventoryEntry second) => first with
    {
        InnName = first.InnName ?? second.InnName,
        PharmacopoeiaName = first.PharmacopoeiaName ?? second.PharmacopoeiaName,
        CasNumbers = [.. first.CasNumbers.Union(second.CasNumbers, StringComparer.Ordinal)],
        EcNumbers = [.. first.EcNumbers.Union(second.EcNumbers, StringComparer.Ordinal)],
        Functions = [.. first.Functions.Union(second.Functions, StringComparer.Ordinal)],
        Description = first.Description ?? second.Description,
        Restriction = first.Restriction ?? second.Restriction,
    };

    private static bool Same(InventoryEntry a, InventoryEntry b) =>
        a.CasNumbers.Count == b.CasNumbers.Count && a.EcNumbers.Count == b.EcNumbers.Count && a.Functions.Count == b.Functions.Count
        && (a.InnName, a.PharmacopoeiaName, a.Description, a.Restriction) == (b.InnName, b.PharmacopoeiaName, b.Description, b.Restriction);

    private static string? Optional(string text) => text.Length == 0 ? null : text;

    private IReadOnlyList<string> Functions(string cell)
    {
        if (!functions.TryGetValue(cell, out var list))
        {
            functions.Add(cell, list = InventoryFunctions.Of(cell));
        }

        return list;
    }
}
