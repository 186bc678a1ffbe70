using Materia.Data;
using Microsoft.Data.Sqlite;

namespace Materia.Api.Tests.Databases;

/// <summary>A SQLite file in a folder of its own under the system's folder for temporary files.</summary>
public sealed class SqliteFile : TestDatabase
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("materia-test-");

    /// <inheritdoc/>
    public override DatabaseSettings Settings => new()
    {
        Provider = DatabaseProvider.Sqlite,
        ConnectionString = new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder.FullName, "materia.db") }.ToString(),
    };

    /// <inheritdoc/>
    public override ValueTask InitializeAsync() => ValueTask.CompletedTask;

    /// <inheritdoc/>
    public override ValueTask DisposeAsync()
    {
        // Pooled connections keep the file open.
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }
}
