namespace Materia.Data.Engines;

/// <summary>The keys of the advisory locks. They are the service's own for the whole database.</summary>
internal static class PostgreSqlLocks
{
    /// <summary>Held by the transaction that publishes a release ("materia" in ASCII, and 1).</summary>
    public const long Publishing = 0x6D61_7465_7269_6101;

    /// <summary>Held by the session that migrates ("materia" in ASCII, and 2).</summary>
    public const long Migrating = 0x6D61_7465_7269_6102;
}
