using Materia.Data;

namespace Materia.Seed.Cli;

/// <summary>The database that a command writes to: the one that its options name, else the one of the environment.</summary>
internal static class ChosenDatabase
{
    /// <summary>The settings; <paramref name="fault"/> says what is wrong with them when the result is <see langword="null"/>.</summary>
    public static DatabaseSettings? Of(Arguments arguments, out string? fault)
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
}
