using Materia.Api.Tests.Databases;
using Materia.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Materia.Api.Tests.Data;

/// <summary>The migration set of an engine.</summary>
public abstract class MigrationTests(TestDatabase database)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public void Model_AfterAnyChange_HasAMigration()
    {
        using var context = database.CreateContext();

        context.Database.HasPendingModelChanges().ShouldBeFalse(
            "The model changed: add a migration for each engine, as the summary of PostgreSqlContextForMigrations says.");
    }

    [Fact]
    public async Task MigrateAsync_SeveralNodesOnAnEmptyDatabase_MakesTheTablesOnce()
    {
        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(MigrateAsync, Cancellation)));

        await using var context = database.CreateContext();
        (await context.Database.GetPendingMigrationsAsync(Cancellation)).ShouldBeEmpty();
        (await new ReleaseStore(context).ListAsync(Cancellation)).ShouldBeEmpty();
    }

    [Fact]
    public async Task MigrateAsync_UpToDate_ChangesNothing()
    {
        await MigrateAsync();
        await using var context = database.CreateContext();
        var before = await context.Database.GetAppliedMigrationsAsync(Cancellation);

        await MigrateAsync();

        (await context.Database.GetAppliedMigrationsAsync(Cancellation)).ShouldBe(before);
    }

    [Fact]
    public async Task MigrateAsync_DatabaseOfTheFirstVersion_AddsWhatItLacks()
    {
        await MigrateAsync();
        await using var context = database.CreateContext();
        var all = context.Database.GetMigrations().ToList();
        all.Count.ShouldBeGreaterThan(1);
        await context.GetService<IMigrator>().MigrateAsync(all[0], Cancellation);
        (await context.Database.GetPendingMigrationsAsync(Cancellation)).ShouldBe(all.Skip(1));

        await MigrateAsync();

        (await context.Database.GetPendingMigrationsAsync(Cancellation)).ShouldBeEmpty();
        (await Raw.CountAsync(database, "SELECT count(*) FROM triacylglycerol_share")).ShouldBe(0);
        (await Raw.CountAsync(database, "SELECT count(*) FROM composite_part")).ShouldBe(0);
    }

    private async Task MigrateAsync()
    {
        await using var context = database.CreateContext();
        await MateriaDatabase.MigrateAsync(context, Cancellation);
    }
}

public sealed class PostgreSqlMigrationTests(PostgreSqlDatabase database) : MigrationTests(database), IClassFixture<PostgreSqlDatabase>;
