using Materia.Data;
using Microsoft.EntityFrameworkCore;

namespace Materia.Api.Tests.Databases;

/// <summary>An empty database of a test class, gone when the class has run. Use it as a class fixture.</summary>
public abstract class TestDatabase : IAsyncLifetime
{
    private MateriaContextFactory? contexts;
    private bool migrated;

    /// <summary>What the service or a context needs to use the database; set once it is there.</summary>
    public abstract DatabaseSettings Settings { get; }

    /// <summary>Makes a context; the caller disposes of it.</summary>
    public MateriaContext CreateContext() => (contexts ??= new MateriaContextFactory(Settings)).CreateDbContext();

    /// <summary>Makes the tables at the first call, and deletes every release.</summary>
    public async Task EmptyAsync()
    {
        await using var context = CreateContext();
        if (!migrated)
        {
            await MateriaDatabase.MigrateAsync(context, TestContext.Current.CancellationToken);
            migrated = true;
        }

        var token = TestContext.Current.CancellationToken;
        await context.Database.ExecuteSqlAsync($"DELETE FROM release", token);
        await context.Database.ExecuteSqlAsync($"DELETE FROM inventory_import", token);
        await context.Database.ExecuteSqlAsync($"DELETE FROM inventory_entry", token);
    }

    /// <summary>Makes the database, without tables.</summary>
    public abstract ValueTask InitializeAsync();

    /// <summary>Deletes the database.</summary>
    public abstract ValueTask DisposeAsync();
}
