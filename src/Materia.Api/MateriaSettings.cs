using Materia.Data;
using Microsoft.Data.Sqlite;

namespace Materia.Api;

/// <summary>What an operator can set, under <c>Materia</c> in the configuration (<c>MATERIA__…</c> in the environment).</summary>
public sealed class MateriaSettings
{
    /// <summary>Where the seed data lies; by default the copy beside the program.</summary>
    public string SeedDirectory { get; set; } = Path.Combine(AppContext.BaseDirectory, "seed-data");

    /// <summary>The database; by default a SQLite file <c>materia.db</c> in the content root.</summary>
    public DatabaseSettings Database { get; set; } = new();

    /// <summary>The largest body that a request may have [byte].</summary>
    public long RequestBodyLimit { get; set; } = 1_048_576;

    /// <summary>How long a client may keep a catalogue answer before it asks again [s].</summary>
    public int CacheSeconds { get; set; } = 300;

    /// <summary>Limits on how often one client may ask.</summary>
    public RateLimitSettings RateLimit { get; set; } = new();

    /// <summary>The database settings with the default file placed in <paramref name="contentRoot"/>.</summary>
    public DatabaseSettings DatabaseIn(string contentRoot)
    {
        if (Database.Provider != DatabaseProvider.Sqlite || !string.IsNullOrWhiteSpace(Database.ConnectionString))
        {
            return Database;
        }

        var file = new SqliteConnectionStringBuilder { DataSource = Path.Combine(contentRoot, "materia.db") };
        return Database with { ConnectionString = file.ToString() };
    }
}

/// <summary>Limits on how often one client may ask.</summary>
public sealed class RateLimitSettings
{
    /// <summary>POST requests that one client address may make in a minute.</summary>
    public int PostsPerMinute { get; set; } = 120;
}
