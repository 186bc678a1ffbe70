using System.Text.Json;
using Materia.Api.Tests.Databases;
using Materia.Catalogue;
using Materia.Data;

namespace Materia.Api.Tests.Data;

/// <summary>Tests that publish and read releases; each starts on a database with tables and no release.</summary>
public abstract class ReleaseTests(TestDatabase database) : IAsyncLifetime
{
    /// <summary>A time with an offset, and with more places than the microseconds that PostgreSQL keeps.</summary>
    protected static DateTimeOffset Now { get; } = new DateTimeOffset(2026, 3, 4, 5, 6, 7, TimeSpan.FromHours(2)).AddTicks(1_234_567);

    protected static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    protected TestDatabase Database { get; } = database;

    public async ValueTask InitializeAsync() => await Database.EmptyAsync();

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    protected static string Json(CatalogueContent content) => JsonSerializer.Serialize(content, CatalogueJson.Options);

    protected async Task<PublishOutcome> PublishAsync(CatalogueContent content, ReleaseOrigin origin = ReleaseOrigin.Seed)
    {
        await using var context = Database.CreateContext();
        return await new ReleaseStore(context).PublishAsync(content, origin, Now, Cancellation);
    }

    protected async Task<Release> ReadCurrentAsync()
    {
        await using var context = Database.CreateContext();
        return (await new ReleaseStore(context).ReadCurrentAsync(Cancellation)).ShouldNotBeNull();
    }

    protected async Task<IReadOnlyList<ReleaseHeader>> HeadersAsync()
    {
        await using var context = Database.CreateContext();
        return await new ReleaseStore(context).ListAsync(Cancellation);
    }
}
