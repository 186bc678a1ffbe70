using Materia.Data;
using Npgsql;

namespace Materia.Api.Tests.Databases;

/// <summary>A database of its own on the run's PostgreSQL server.</summary>
public sealed class PostgreSqlDatabase(PostgreSqlServer server) : TestDatabase
{
    private readonly string name = $"materia_test_{Guid.NewGuid():N}";
    private string? connection;

    /// <inheritdoc/>
    public override DatabaseSettings Settings => new()
    {
        Provider = DatabaseProvider.PostgreSql,
        ConnectionString = connection ?? throw new InvalidOperationException("The database is made by InitializeAsync."),
    };

    /// <inheritdoc/>
    public override async ValueTask InitializeAsync()
    {
        await ExecuteAsync($"CREATE DATABASE {name}");
        connection = new NpgsqlConnectionStringBuilder(await server.ConnectionStringAsync()) { Database = name }.ToString();
    }

    /// <inheritdoc/>
    public override async ValueTask DisposeAsync() => await ExecuteAsync($"DROP DATABASE IF EXISTS {name} WITH (FORCE)");

    private async Task ExecuteAsync(string sql)
    {
        await using var administration = new NpgsqlConnection(await server.ConnectionStringAsync());
        await administration.OpenAsync();
        await using var command = new NpgsqlCommand(sql, administration);
        await command.ExecuteNonQueryAsync();
    }
}
