using Materia.Data;

namespace Materia.Seed.Cli;

/// <summary>A command line that was understood.</summary>
internal sealed record Arguments
{
    /// <summary>The directory meant when none is named.</summary>
    public const string DefaultDirectory = "seed-data";

    /// <summary>The command.</summary>
    public required string Command { get; init; }

    /// <summary>The seed directory; for an inventory the file.</summary>
    public string Directory { get; init; } = DefaultDirectory;

    /// <summary>The database that options name, or <see langword="null"/> when none does.</summary>
    public DatabaseSettings? Database { get; init; }

    /// <summary>True when a report is wanted as JSON.</summary>
    public bool Json { get; init; }

    /// <summary>Reads a command line; <paramref name="fault"/> says what was not understood when the result is <see langword="null"/>.</summary>
    public static Arguments? Parse(IReadOnlyList<string> args, out string? fault)
    {
        fault = null;
        if (args.Count == 0)
        {
            fault = "no command";
            return null;
        }

        if (!SeedCommand.Names.Contains(args[0], StringComparer.Ordinal))
        {
            fault = $"unknown command {args[0]}";
            return null;
        }

        string? directory = null;
        DatabaseSettings? database = null;
        var json = false;
        for (var i = 1; i < args.Count; i++)
        {
            if (args[i] is "--sqlite" or "--postgres")
            {
                fault = args[0] is not (SeedCommand.Load or SeedCommand.Inventory) ? $"{args[i]} belongs to {SeedCommand.Load} and {SeedCommand.Inventory}"
                    : i + 1 == args.Count ? $"{args[i]} needs a value"
                    : database is not null ? "two databases are named"
                    : null;
                database = fault is null ? Settings(args[i], args[++i]) : null;
            }
            else if (args[i] == "--format")
            {
                fault = args[0] != SeedCommand.Report ? $"{args[i]} belongs to {SeedCommand.Report}"
                    : i + 1 == args.Count || args[i + 1] is not ("text" or "json") ? $"{args[i]} needs text or json"
                    : null;
                json = fault is null && args[++i] == "json";
            }
            else
            {
                fault = args[i].StartsWith('-') ? $"unknown option {args[i]}"
                    : directory is not null ? $"a second {(args[0] == SeedCommand.Inventory ? "file" : "directory")} {args[i]}"
                    : null;
                directory = args[i];
            }

            if (fault is not null)
            {
                return null;
            }
        }

        if (directory is null && args[0] == SeedCommand.Inventory)
        {
            fault = "name the file that holds the inventory";
            return null;
        }

        return new Arguments { Command = args[0], Directory = directory ?? DefaultDirectory, Database = database, Json = json };
    }

    private static DatabaseSettings Settings(string option, string value) => option == "--sqlite"
        ? new DatabaseSettings { Provider = DatabaseProvider.Sqlite, ConnectionString = $"Data Source={value}" }
        : new DatabaseSettings { Provider = DatabaseProvider.PostgreSql, ConnectionString = value };
}
