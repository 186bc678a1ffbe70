using Materia.Catalogue.Inventory;
using Materia.Search.Indexing;
using Materia.Search.Querying;

namespace Materia.Search.Inventory;

/// <summary>The search over the imported inventory of names, built once and immutable; any number of threads may search at once.</summary>
public sealed class InventoryIndex : IDisposable
{
    private readonly NameInventory inventory;
    private readonly NameIndex index;
    private readonly TextMatcher matcher;

    private InventoryIndex(NameInventory inventory)
    {
        this.inventory = inventory;

        // INCI names are copied rather than typed from memory: words run together are rare, and their pairs would double the work.
        (var names, index) = NameIndexWriter.Build([.. inventory.Entries.Select(NamedRecord.Of)], withPairs: false);
        matcher = new TextMatcher(names, index);
    }

    /// <summary>Builds the index of an inventory.</summary>
    public static InventoryIndex Build(NameInventory inventory) => new(inventory);

    /// <summary>Searches. A faulty cursor gives a page that holds the fault and nothing else; nothing a user types throws.</summary>
    public InventoryPage Search(InventoryRequest request)
    {
        var last = -1;
        if (request.After is { } after && InventoryCursor.Read(after, inventory, request, out last) is { } fault)
        {
            return new InventoryPage { Faults = [fault] };
        }

        var (found, asTyped) = Find(request);
        var start = last < 0 ? 0 : found.IndexOf(last) + 1;
        var page = found.GetRange(start, Math.Min(request.Limit, found.Count - start));
        return new InventoryPage
        {
            Total = found.Count,
            Entries = [.. page.Select(i => inventory.Entries[i])],
            AsTyped = asTyped,
            Next = start + page.Count < found.Count ? InventoryCursor.Write(inventory, request, page[^1]) : null,
        };
    }

    /// <summary>Gives the memory back; searching afterwards throws <see cref="ObjectDisposedException"/>.</summary>
    public void Dispose() => index.Dispose();

    private (List<int> Found, bool AsTyped) Find(InventoryRequest request)
    {
        bool Accepts(int entry) =>
            request.Functions.Count == 0 || request.Functions.Any(f => inventory.Entries[entry].Functions.Contains(f, StringComparer.Ordinal));
        if (string.IsNullOrWhiteSpace(request.Text))
        {
            return ([.. Enumerable.Range(0, inventory.Entries.Count).Where(Accepts)], true);
        }

        var match = matcher.Match(TextQuery.Of(request.Text));
        return ([.. match.Ranked.Where(r => Accepts(r.Ingredient)).OrderBy(r => r.Rank).Select(r => r.Ingredient)], match.AsTyped);
    }
}
