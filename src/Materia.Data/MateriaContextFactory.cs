using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.Logging;

namespace Materia.Data;

/// <summary>Makes contexts on the database that the settings name. Safe to share between threads; each context serves one at a time.</summary>
public sealed class MateriaContextFactory : IDbContextFactory<MateriaContext>
{
    private readonly Func<MateriaContext> create;

    /// <summary>Reads the settings; no connection is opened yet.</summary>
    /// <param name="settings">Engine and connection string.</param>
    /// <param name="loggers">Where the database's messages go; nowhere when absent.</param>
    /// <exception cref="InvalidOperationException">The settings have <see cref="DatabaseSettings.Faults"/>; the message tells them.</exception>
    public MateriaContextFactory(DatabaseSettings settings, ILoggerFactory? loggers = null)
    {
        var connection = settings.Effective();
        if (settings.Provider == DatabaseProvider.PostgreSql)
        {
            var options = Options<PostgreSqlMateriaContext>(loggers).UseNpgsql(connection).Options;
            create = () => new PostgreSqlMateriaContext(options);
        }
        else
        {
            var options = Options<SqliteMateriaContext>(loggers).UseSqlite(connection).Options;
            create = () => new SqliteMateriaContext(options);
        }
    }

    /// <summary>Makes a context; the caller disposes of it.</summary>
    public MateriaContext CreateDbContext() => create();

    // Whether a change of the model lacks a migration is asked by a test, once, instead of at each start: the answer takes the
    // better part of a second and cannot differ between two starts of one build.
    private static DbContextOptionsBuilder<T> Options<T>(ILoggerFactory? loggers)
        where T : MateriaContext => new DbContextOptionsBuilder<T>()
        .UseLoggerFactory(loggers)
        .ConfigureWarnings(warnings => warnings.Ignore(RelationalEventId.PendingModelChangesWarning));
}
