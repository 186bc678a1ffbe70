using System.Data.Common;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Materia.Data;

/// <summary>Which database the service uses. The default is a SQLite file in the working directory.</summary>
public sealed record DatabaseSettings
{
    /// <summary>The name of the configuration section that these settings are read from.</summary>
    public const string Section = "Database";

    /// <summary>The engine.</summary>
    public DatabaseProvider Provider { get; init; } = DatabaseProvider.Sqlite;

    /// <summary>The engine's connection string; for SQLite <c>Data Source=materia.db</c> when it is absent.</summary>
    public string? ConnectionString { get; init; }

    /// <summary>What is wrong with the settings, each with what to do about it; empty when they can be used. Never repeats the connection string, which may hold a password.</summary>
    public IReadOnlyList<string> Faults()
    {
        try
        {
            return Provider switch
            {
                DatabaseProvider.Sqlite => SqliteFaults(Sqlite()),
                DatabaseProvider.PostgreSql => PostgreSqlFaults(new NpgsqlConnectionStringBuilder(ConnectionString)),
                _ => [$"{Section}:Provider must be {nameof(DatabaseProvider.Sqlite)} or {nameof(DatabaseProvider.PostgreSql)}."],
            };
        }
        catch (ArgumentException)
        {
            return [$"{Section}:ConnectionString cannot be read as a {Provider} connection string, written as Key=Value pairs with semicolons between; a keyword or a value in it is not known."];
        }
    }

    /// <summary>The connection string as the engine gets it, with what Materia relies on: foreign keys held, and half a minute of waiting for another writer.</summary>
    /// <exception cref="InvalidOperationException">The settings have <see cref="Faults"/>.</exception>
    internal string Effective()
    {
        if (Faults() is { Count: > 0 } faults)
        {
            throw new InvalidOperationException(string.Join(" ", faults));
        }

        if (Provider == DatabaseProvider.PostgreSql)
        {
            return ConnectionString!;
        }

        var sqlite = Sqlite();
        sqlite.ForeignKeys = true;
        if (!Has(sqlite, "Default Timeout"))
        {
            sqlite.DefaultTimeout = 30;
        }

        return sqlite.ToString();
    }

    private SqliteConnectionStringBuilder Sqlite() =>
        new(string.IsNullOrWhiteSpace(ConnectionString) ? "Data Source=materia.db" : ConnectionString);

    private static bool Has(DbConnectionStringBuilder builder, string keyword) => builder.ShouldSerialize(keyword);

    private static IReadOnlyList<string> SqliteFaults(SqliteConnectionStringBuilder sqlite)
    {
        if (sqlite.DataSource.Length == 0)
        {
            return [$"{Section}:ConnectionString names no file; write Data Source=materia.db."];
        }

        if (sqlite.DataSource == ":memory:" || sqlite.Mode == SqliteOpenMode.Memory)
        {
            return [$"{Section}:ConnectionString names a database in memory, which each connection would have to itself; name a file."];
        }

        return Path.GetDirectoryName(Path.GetFullPath(sqlite.DataSource)) is { } folder && !Directory.Exists(folder)
            ? [$"{Section}:ConnectionString names a file in the folder {folder}, which does not exist; make the folder or name another."]
            : [];
    }

    private static IReadOnlyList<string> PostgreSqlFaults(NpgsqlConnectionStringBuilder postgreSql) =>
        string.IsNullOrWhiteSpace(postgreSql.Host) || string.IsNullOrWhiteSpace(postgreSql.Database)
            ? [$"{Section}:ConnectionString must name a server and a database for PostgreSql: Host=…;Database=…;Username=…;Password=…"]
            : [];
}
