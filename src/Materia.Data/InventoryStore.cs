using System.Data;
using System.Data.Common;
using Materia.Catalogue;
using Materia.Catalogue.Inventory;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Materia.Data;

/// <summary>The inventory of ingredient names in the database. It stands beside the releases: an import replaces the one before.</summary>
public sealed class InventoryStore(MateriaContext context)
{
    /// <summary>Reads the inventory, or <see langword="null"/> when none was imported.</summary>
    public async Task<NameInventory?> ReadAsync(CancellationToken cancellation)
    {
        // One snapshot for all three reads, so that an import under way is seen whole or not at all.
        await using var transaction = await context.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancellation);
        if (await ImportAsync(cancellation) is not { } import)
        {
            return null;
        }

        var numbers = (await context.Set<InventoryNumberRow>().AsNoTracking()
            .OrderBy(n => n.Entry).ThenBy(n => n.Registry).ThenBy(n => n.Ordinal).ToListAsync(cancellation))
            .ToLookup(n => n.Entry);
        var functions = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        var rows = await context.Set<InventoryEntryRow>().AsNoTracking().OrderBy(e => e.Ordinal).ToListAsync(cancellation);
        return new NameInventory(rows.ConvertAll(r => r.ToRecord(numbers[r.Ordinal], functions)), import.Checksum, import.Imported);
    }

    /// <summary>
    /// Puts these entries in place of those that are there, in one transaction; does nothing when they are the same.
    /// </summary>
    /// <param name="entries">The entries, each name once, in ordinal order.</param>
    /// <param name="now">The time of the import.</param>
    /// <param name="cancellation">Gives up; the inventory stays as it was.</param>
    /// <returns>True when something changed.</returns>
    /// <exception cref="DbException">A constraint refused a row, and its message names it; the inventory stays as it was.</exception>
    public async Task<bool> ReplaceAsync(IReadOnlyList<InventoryEntry> entries, DateTimeOffset now, CancellationToken cancellation)
    {
        var checksum = CatalogueJson.InventoryChecksum(entries);
        await using var transaction = await context.Database.BeginTransactionAsync(IsolationLevel.ReadCommitted, cancellation);
        await context.LockPublishingAsync(cancellation);
        if (await ImportAsync(cancellation) is { } import && import.Checksum == checksum)
        {
            return false;
        }

        await context.Set<InventoryImportRow>().ExecuteDeleteAsync(cancellation);
        await context.Set<InventoryNumberRow>().ExecuteDeleteAsync(cancellation);
        await context.Set<InventoryEntryRow>().ExecuteDeleteAsync(cancellation);
        await InsertAsync<InventoryEntryRow>(entries.Select((e, ordinal) => new InventoryEntryRow(ordinal, e)), cancellation);
        await InsertAsync<InventoryNumberRow>(entries.SelectMany(Numbers), cancellation);
        var row = new InventoryImportRow { Checksum = checksum, Imported = now.ToUniversalTime(), EntryCount = entries.Count };
        await InsertAsync<InventoryImportRow>([row], cancellation);
        await transaction.CommitAsync(cancellation);
        return true;
    }

    private static IEnumerable<InventoryNumberRow> Numbers(InventoryEntry entry, int ordinal) =>
        Numbers(entry.CasNumbers, Registry.Cas, ordinal).Concat(Numbers(entry.EcNumbers, Registry.Ec, ordinal));

    private static IEnumerable<InventoryNumberRow> Numbers(IReadOnlyList<string> numbers, Registry registry, int entry) =>
        numbers.Select((number, place) => new InventoryNumberRow { Entry = entry, Registry = registry, Ordinal = place, Number = number });

    private Task InsertAsync<T>(IEnumerable<T> rows, CancellationToken cancellation)
        where T : class => context.InsertAsync(new TableColumns(context, typeof(T)), rows, cancellation);

    private Task<InventoryImportRow?> ImportAsync(CancellationToken cancellation) =>
        context.Set<InventoryImportRow>().AsNoTracking().SingleOrDefaultAsync(cancellation);
}
