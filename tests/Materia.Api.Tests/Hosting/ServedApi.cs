using System.Net;
using Materia.Api.Tests.Databases;

namespace Materia.Api.Tests.Hosting;

/// <summary>The service on one database, filled from the repository's own seed data, started once for all classes of its collection.</summary>
public abstract class ServedApi(TestDatabase database) : IAsyncLifetime
{
    // A start takes some two seconds; a busy build machine may need many times that.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    private MateriaApplication? application;

    /// <summary>Asks the service.</summary>
    public HttpClient Client { get; private set; } = null!;

    /// <summary>The database below it.</summary>
    public TestDatabase Database => database;

    /// <summary>Waits until the service says that it is ready.</summary>
    /// <exception cref="TimeoutException">It did not become ready; the message is its last answer.</exception>
    public static async Task WaitUntilReadyAsync(HttpClient client)
    {
        var end = DateTime.UtcNow + Patience;
        while (true)
        {
            using var ready = await client.GetAsync("/health/ready");
            if (ready.StatusCode == HttpStatusCode.OK)
            {
                return;
            }

            if (DateTime.UtcNow > end)
            {
                throw new TimeoutException($"Not ready after {Patience}: {await ready.Content.ReadAsStringAsync()}");
            }

            await Task.Delay(100);
        }
    }

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        await database.InitializeAsync();
        await PrepareAsync();
        application = new MateriaApplication(database.Settings);
        Client = MateriaApplication.Client(application.Start());
        await WaitUntilReadyAsync(Client);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Client?.Dispose();
        if (application is not null)
        {
            await application.DisposeAsync();
        }

        await database.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    /// <summary>What is done to the empty database before the service starts; by default nothing.</summary>
    protected virtual Task PrepareAsync() => Task.CompletedTask;
}

/// <summary>The service on SQLite.</summary>
public sealed class SqliteApi() : ServedApi(new SqliteFile());

/// <summary>The service on PostgreSQL.</summary>
public sealed class PostgreSqlApi(PostgreSqlServer server) : ServedApi(new PostgreSqlDatabase(server));

/// <summary>The classes that share the service on SQLite.</summary>
[CollectionDefinition(nameof(SqliteApi))]
public sealed class OnSqlite : ICollectionFixture<SqliteApi>;

/// <summary>The classes that share the service on PostgreSQL.</summary>
[CollectionDefinition(nameof(PostgreSqlApi))]
public sealed class OnPostgreSql : ICollectionFixture<PostgreSqlApi>;
