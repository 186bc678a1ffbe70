using Materia.Seed.Formatting;
using Materia.Seed.Schema;

namespace Materia.Seed.Cli;

/// <summary>The command line: <c>check</c>, <c>format</c>, <c>schema</c>, <c>load</c>, <c>report</c> and <c>inventory</c>.</summary>
public static class SeedCommand
{
    internal const string Check = "check";
    internal const string Format = "format";
    internal const string Schema = "schema";
    internal const string Load = "load";
    internal const string Report = "report";
    internal const string Inventory = "inventory";

    private const string Help =
        """
        Usage: Materia.Seed <command> [directory] [options]
               Materia.Seed inventory <file> [options]

          check      report every fault of the data, its layout and its schemas
          format     lay the files out in their canonical form
          schema     write the JSON Schemas of the files
          load       check, and publish the data as a release when it has no fault
          report     print counts, grades, gaps and conflicts of data without faults; --format json for programs
          inventory  put the names of the official European inventory, exported as CSV, in place of those imported before;
                     what is wrong in a row is reported and put right or left out

        The directory is seed-data unless another is named.
        load and inventory take --sqlite <file> or --postgres <connection string>; without either, the environment variables
        Database__Provider (Sqlite or PostgreSql) and Database__ConnectionString name the database, as for the service.

        Exit code 0: done. 1: there are faults, nothing was loaded. 2: the command was not understood.
        """;

    internal static IReadOnlyList<string> Names { get; } = [Check, Format, Schema, Load, Report, Inventory];

    /// <summary>Runs a command line and gives its <see cref="ExitCode"/>.</summary>
    /// <param name="args">The command and what follows it.</param>
    /// <param name="output">Receives what was done.</param>
    /// <param name="error">Receives the faults, one a line.</param>
    /// <param name="cancellation">Stops a load; nothing of it stays.</param>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        if (args is ["--help" or "-h" or "help"])
        {
            await output.WriteLineAsync(Help);
            return ExitCode.Done;
        }

        if (Arguments.Parse(args, out var misunderstood) is not { } arguments)
        {
            await error.WriteLineAsync($"{misunderstood}\n\n{Help}");
            return ExitCode.Usage;
        }

        if (arguments.Command == Inventory)
        {
            return await InventoryCommand.RunAsync(arguments, output, error, cancellation);
        }

        if (!Directory.Exists(arguments.Directory))
        {
            await error.WriteLineAsync($"there is no directory {arguments.Directory}; name the one that holds the seed data");
            return ExitCode.Usage;
        }

        return arguments.Command switch
        {
            Check => PrintFaults(SeedCheck.Run(arguments.Directory), output, error),
            Format => PrintFaults(SeedFormatter.Rewrite(arguments.Directory, path => output.WriteLine($"formatted {path}")), output, error),
            Schema => WriteSchemas(arguments.Directory, output),
            Report => await ReportCommand.RunAsync(arguments, output, error),
            _ => await LoadCommand.RunAsync(arguments, output, error, cancellation),
        };
    }

    /// <summary>Prints the faults, one a line, and their number.</summary>
    internal static int PrintFaults(IReadOnlyList<SeedFault> faults, TextWriter output, TextWriter error)
    {
        foreach (var fault in faults)
        {
            error.WriteLine(fault);
        }

        output.WriteLine(faults.Count switch { 0 => "no faults", 1 => "1 fault", var n => $"{n} faults" });
        return faults.Count == 0 ? ExitCode.Done : ExitCode.Faults;
    }

    private static int WriteSchemas(string directory, TextWriter output)
    {
        SeedSchema.Write(directory);
        output.WriteLine("schemas written");
        return ExitCode.Done;
    }
}
