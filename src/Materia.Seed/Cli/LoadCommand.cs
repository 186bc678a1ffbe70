using System.Data.Common;
using Materia.Catalogue;
using Materia.Data;
using Microsoft.EntityFrameworkCore;

namespace Materia.Seed.Cli;

/// <summary>Checks the data and publishes it as a release.</summary>
internal static class LoadCommand
{
    /// <summary>Loads all or nothing: with any fault in the data, or when the database refuses, no release is made.</summary>
    public static async Task<int> RunAsync(Arguments arguments, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        if (Database(arguments, out var misunderstood) is not { } settings)
        {
            await error.WriteLineAsync(misunderstood);
            return ExitCode.Usage;
        }

        var result = SeedReader.Read(arguments.Directory);
        if (result.Content is not { } content)
        {
            return SeedCommand.PrintFaults(result.Faults, output, error);
        }

        try
        {
            var outcome = await PublishAsync(content, settings, cancellation);
            await output.WriteLineAsync(outcome.Changed
                ? $"release {outcome.Number}: {content.Ingredients.Count} ingredients, {content.Sources.Count} sources"
                : $"release {outcome.Number} holds this data already; nothing changed");
            return ExitCode.Done;
        }
        catch (Exception refusal) when (refusal is DbException or DbUpdateException)
        {
            await error.WriteLineAsync($"the database refused, nothing was loaded: {refusal.GetBaseException().Message}");
            return ExitCode.Faults;
        }
    }

    private static DatabaseSettings? Database(Arguments arguments, out string? fault)
    {
        fault = null;
        var settings = arguments.Database;
        if (settings is null)
        {
            var provider = Environment.GetEnvironmentVariable($"{DatabaseSettings.Section}__{nameof(DatabaseSettings.Provider)}");
            if (!Enum.TryParse<DatabaseProvider>(provider ?? nameof(DatabaseProvider.Sqlite), ignoreCase: true, out var engine))
            {
                fault = $"{DatabaseSettings.Section}__{nameof(DatabaseSettings.Provider)} is {provider}; write {string.Join(" or ", Enum.GetNames<DatabaseProvider>())}";
                return null;
            }

            settings = new DatabaseSettings
            {
                Provider = engine,
                ConnectionString = Environment.GetEnvironmentVariable($"{DatabaseSettings.Section}__{nameof(DatabaseSettings.ConnectionString)}"),
            };
        }

        fault = settings.Faults() is { Count: > 0 } faults ? string.Join('\n', faults) : null;
        return fault is null ? settings : null;
    }

    private static async Task<PublishOutcome> PublishAsync(CatalogueContent content, DatabaseSettings settings, CancellationToken cancellation)
    {
        await using var context = new MateriaContextFactory(settings).CreateDbContext();
        await MateriaDatabase.MigrateAsync(context, cancellation);
        return await new ReleaseStore(context).PublishAsync(content, ReleaseOrigin.Seed, DateTimeOffset.UtcNow, cancellation);
    }
}
