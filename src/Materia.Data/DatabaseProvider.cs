namespace Materia.Data;

/// <summary>The engines that the model runs on.</summary>
public enum DatabaseProvider
{
    /// <summary>SQLite: one file, no server.</summary>
    Sqlite,

    /// <summary>PostgreSQL, for several nodes.</summary>
    PostgreSql,
}
