using Materia.Api.Tests.Databases;
using Testcontainers.PostgreSql;

[assembly: AssemblyFixture(typeof(PostgreSqlServer))]

namespace Materia.Api.Tests.Databases;

/// <summary>
/// The one PostgreSQL server of a test run, started when the first class asks for it: the server that the environment variable
/// <c>MATERIA_TEST_POSTGRES</c> names, else a container, else a throw-away cluster of the PostgreSQL installed here. Where none
/// of them can be had, tests that need it fail; they are never skipped.
/// </summary>
public sealed class PostgreSqlServer : IAsyncDisposable
{
    /// <summary>The environment variable with the connection string of a server on which the tests may make databases.</summary>
    public const string Variable = "MATERIA_TEST_POSTGRES";

    private readonly Lazy<Task<string>> connection;
    private PostgreSqlContainer? container;
    private LocalCluster? cluster;

    public PostgreSqlServer() => connection = new Lazy<Task<string>>(StartAsync);

    /// <summary>A connection string for the server's database of administration; starts the server at the first call.</summary>
    public Task<string> ConnectionStringAsync() => connection.Value;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (container is not null)
        {
            await container.DisposeAsync();
        }

        if (cluster is not null)
        {
            await cluster.DisposeAsync();
        }
    }

    private async Task<string> StartAsync()
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named)
        {
            Console.WriteLine($"PostgreSQL for the tests: the server that {Variable} names.");
            return named;
        }

        if (await DockerEngine.AnswersAsync())
        {
            container = new PostgreSqlBuilder("postgres:17.6").Build();
            await container.StartAsync();
            Console.WriteLine("PostgreSQL for the tests: a container of postgres:17.6.");
            return container.GetConnectionString();
        }

        if (LocalCluster.FindBinaries() is { } binaries)
        {
            cluster = await LocalCluster.StartAsync(binaries);
            Console.WriteLine($"PostgreSQL for the tests: a throw-away cluster of {binaries}.");
            return cluster.ConnectionString;
        }

        throw new InvalidOperationException(
            $"The tests need a PostgreSQL server. Set {Variable} to the connection string of one on which databases may be made, " +
            "or start Docker, or install PostgreSQL 15 or later (Debian: apt-get install postgresql) so that initdb and pg_ctl are found.");
    }
}
