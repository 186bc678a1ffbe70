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
        if (ChosenDatabase.Of(arguments, out var misunderstood) is not { } settings)
        {
            await error.WriteLineAsync(misunderstood);
            return ExitCode.Usage;
        }

        // Working out the database's model takes about as long as reading the files, and opens nothing.
        await using var context = new MateriaContextFactory(settings).CreateDbContext();
        var model = Task.Run(() => context.Model, cancellation);
        var result = SeedReader.Read(arguments.Directory);
        await model;
        if (result.Content is not { } content)
        {
            return SeedCommand.PrintFaults(result.Faults, output, error);
        }

        try
        {
            var outcome = await PublishAsync(content, context, cancellation);
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

    private static async Task<PublishOutcome> PublishAsync(CatalogueContent content, MateriaContext context, CancellationToken cancellation)
    {
        await MateriaDatabase.MigrateAsync(context, cancellation);
        return await new ReleaseStore(context).PublishAsync(content, ReleaseOrigin.Seed, DateTimeOffset.UtcNow, cancellation);
    }
}
