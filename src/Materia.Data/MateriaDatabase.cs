using Materia.Data.Engines;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Materia.Data;

/// <summary>The database of the service: registering it, and bringing its tables up to date.</summary>
public static class MateriaDatabase
{
    /// <summary>
    /// Registers an <see cref="IDbContextFactory{TContext}"/> of <see cref="MateriaContext"/>, and a context and a
    /// <see cref="ReleaseStore"/> and an <see cref="InventoryStore"/> for each scope. Opens no connection, so that a database that is down does not stop the start.
    /// </summary>
    /// <exception cref="InvalidOperationException">The settings have <see cref="DatabaseSettings.Faults"/>; the message tells them.</exception>
    public static IServiceCollection AddMateriaDatabase(this IServiceCollection services, DatabaseSettings settings)
    {
        _ = settings.Effective();
        services.AddSingleton<IDbContextFactory<MateriaContext>>(
            provider => new MateriaContextFactory(settings, provider.GetService<ILoggerFactory>()));
        services.AddScoped(provider => provider.GetRequiredService<IDbContextFactory<MateriaContext>>().CreateDbContext());
        services.AddScoped<ReleaseStore>();
        services.AddScoped<InventoryStore>();
        return services;
    }

    /// <summary>
    /// Makes the database where it is missing and applies the migrations that it lacks. Several nodes may call it at once:
    /// one migrates, the others wait.
    /// </summary>
    public static Task MigrateAsync(MateriaContext context, CancellationToken cancellation) => context switch
    {
        PostgreSqlMateriaContext => PostgreSqlMigration.RunAsync(context, cancellation),
        _ => SqliteMigration.RunAsync(context, cancellation),
    };
}
