using System.Data.Common;
using Materia.Data;
using Materia.Seed.Inventory;
using Microsoft.EntityFrameworkCore;

namespace Materia.Seed.Cli;

/// <summary>Imports the official inventory of ingredient names.</summary>
internal static class InventoryCommand
{
    /// <summary>Imports all entries or none; faults of single rows are printed and do not stop it.</summary>
    public static async Task<int> RunAsync(Arguments arguments, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        if (ChosenDatabase.Of(arguments, out var misunderstood) is not { } settings)
        {
            await error.WriteLineAsync(misunderstood);
            return ExitCode.Usage;
        }

        InventoryFile file;
        try
        {
            file = InventoryReader.Read(arguments.Directory);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            await error.WriteLineAsync($"{arguments.Directory} cannot be read: {fault.Message}");
            return ExitCode.Usage;
        }

        foreach (var fault in file.Faults)
        {
            await error.WriteLineAsync($"{arguments.Directory} {fault}");
        }

        if (file.Entries is not { } entries)
        {
            await output.WriteLineAsync("nothing was imported");
            return ExitCode.Faults;
        }

        try
        {
            await using var context = new MateriaContextFactory(settings).CreateDbContext();
            await MateriaDatabase.MigrateAsync(context, cancellation);
            var changed = await new InventoryStore(context).ReplaceAsync(entries, DateTimeOffset.UtcNow, cancellation);
            await output.WriteLineAsync(
                $"{file.Rows} rows, {entries.Count} entries, {file.Faults.Count} faults; " + (changed ? "imported: services show it from their next start" : "the database holds these entries already, nothing changed"));
            return ExitCode.Done;
        }
        catch (Exception refusal) when (refusal is DbException or DbUpdateException)
        {
            await error.WriteLineAsync($"the database refused, nothing was imported: {refusal.GetBaseException().Message}");
            return ExitCode.Faults;
        }
    }
}
