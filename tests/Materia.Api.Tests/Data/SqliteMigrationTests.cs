using Materia.Api.Tests.Databases;
using Materia.Data;
using Microsoft.EntityFrameworkCore;

namespace Materia.Api.Tests.Data;

public sealed class SqliteMigrationTests(SqliteFile database) : MigrationTests(database), IClassFixture<SqliteFile>
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task MigrateAsync_LockLeftByAKilledProcess_Goes()
    {
        await using var context = database.CreateContext();
        await MateriaDatabase.MigrateAsync(context, Cancellation);
        await context.Database.ExecuteSqlAsync(
            $"INSERT INTO __EFMigrationsLock (Id, Timestamp) VALUES (1, {DateTimeOffset.UtcNow.AddMinutes(-5)})", Cancellation);

        // Without the clearing the migrator asks for the lock until it is cancelled.
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancellation);
        patience.CancelAfter(TimeSpan.FromSeconds(20));
        await Should.NotThrowAsync(() => MateriaDatabase.MigrateAsync(context, patience.Token));
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
