using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace Materia.Data.Engines;

/// <summary>Migrating PostgreSQL, one node at a time.</summary>
internal static class PostgreSqlMigration
{
    /// <summary>Makes the database if need be, and migrates under an advisory lock: the migrator's own lock is on a table that has yet to be made on a first start.</summary>
    public static async Task RunAsync(MateriaContext context, CancellationToken cancellation)
    {
        await CreateDatabaseAsync(context, cancellation);
        if (!(await context.Database.GetPendingMigrationsAsync(cancellation)).Any())
        {
            return;
        }

        await context.Database.OpenConnectionAsync(cancellation);
        try
        {
            await context.Database.ExecuteSqlAsync($"SELECT pg_advisory_lock({PostgreSqlLocks.Migrating})", cancellation);
            try
            {
                await context.Database.MigrateAsync(cancellation);
            }
            finally
            {
                await context.Database.ExecuteSqlAsync($"SELECT pg_advisory_unlock({PostgreSqlLocks.Migrating})", CancellationToken.None);
            }
        }
        finally
        {
            await context.Database.CloseConnectionAsync();
        }
    }

    private static async Task CreateDatabaseAsync(MateriaContext context, CancellationToken cancellation)
    {
        var creator = context.GetService<IRelationalDatabaseCreator>();
        if (await creator.ExistsAsync(cancellation))
        {
            return;
        }

        try
        {
            await creator.CreateAsync(cancellation);
        }
        catch (PostgresException fault) when (fault.SqlState is PostgresErrorCodes.DuplicateDatabase or PostgresErrorCodes.UniqueViolation)
        {
            // Another node made it between the question and the order.
        }
    }
}
