using Materia.Api.Tests.Databases;
using Materia.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Materia.Api.Tests.Data;

public sealed class SqliteMigrationTests(SqliteFile database) : MigrationTests(database), IClassFixture<SqliteFile>
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task MigrateAsync_LockLeftByAKilledProcess_Migrates()
    {
        await using var file = new SqliteFile();
        await using (var killed = file.CreateContext())
        {
            // Never released, as by a process that was killed five minutes ago.
            await killed.GetService<IHistoryRepository>().AcquireDatabaseLockAsync(Cancellation);
            (await killed.Database.ExecuteSqlAsync($"UPDATE __EFMigrationsLock SET Timestamp = {DateTimeOffset.UtcNow.AddMinutes(-5)}", Cancellation))
                .ShouldBe(1);
        }

        // Without the clearing the migrator asks for the lock until it is cancelled; migrating takes a second or two.
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancellation);
        patience.CancelAfter(TimeSpan.FromSeconds(30));
        await using var context = file.CreateContext();
        await MateriaDatabase.MigrateAsync(context, patience.Token);

        (await context.Database.GetPendingMigrationsAsync(Cancellation)).ShouldBeEmpty();
    }

    [Fact]
    public async Task MigrateAsync_Done_TheFileHasAWriteAheadLogAndHoldsForeignKeys()
    {
        await using var context = database.CreateContext();
        await MateriaDatabase.MigrateAsync(context, Cancellation);

        (await context.Database.SqlQueryRaw<string>("PRAGMA journal_mode").ToListAsync(Cancellation)).ShouldBe(["wal"]);
        (await context.Database.SqlQueryRaw<int>("PRAGMA foreign_keys").ToListAsync(Cancellation)).ShouldBe([1]);
    }
}
