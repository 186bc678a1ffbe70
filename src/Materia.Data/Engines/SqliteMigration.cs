using Microsoft.EntityFrameworkCore;

namespace Materia.Data.Engines;

/// <summary>Migrating a SQLite file.</summary>
internal static class SqliteMigration
{
    /// <summary>Sets the write-ahead log, so that readers do not wait for a writer, and migrates.</summary>
    public static async Task RunAsync(MateriaContext context, CancellationToken cancellation)
    {
        await context.Database.OpenConnectionAsync(cancellation);
        try
        {
            await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL", cancellation);
            if (!(await context.Database.GetPendingMigrationsAsync(cancellation)).Any())
            {
                return;
            }

            await DropAbandonedLockAsync(context, cancellation);
            await context.Database.MigrateAsync(cancellation);
        }
        finally
        {
            await context.Database.CloseConnectionAsync();
        }
    }

    // The migrator's lock is a row. A process that is killed while it migrates leaves it, and every later start would wait for
    // ever. Migrating a file takes seconds: after a minute nobody holds the lock any more.
    private static async Task DropAbandonedLockAsync(MateriaContext context, CancellationToken cancellation)
    {
        var tables = await context.Database
            .SqlQuery<int>($"SELECT count(*) AS \"Value\" FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsLock'")
            .SingleAsync(cancellation);
        if (tables > 0)
        {
            await context.Database.ExecuteSqlAsync(
                $"DELETE FROM __EFMigrationsLock WHERE julianday(Timestamp) < julianday('now', '-1 minute')", cancellation);
        }
    }
}
