using System.Diagnostics;
using Npgsql;

namespace Materia.Api.Tests.Databases;

/// <summary>A PostgreSQL cluster in a temporary folder, reached by its socket there, and deleted at the end.</summary>
internal sealed class LocalCluster : IAsyncDisposable
{
    // The shell keeps the server until its standard input ends, which it does even when the test run is killed. The server
    // refuses to run as root, therefore root hands the whole script to the user that the packages make.
    private const string Script =
        """
        set -e
        d=$(mktemp -d "${TMPDIR:-/tmp}/materia-pg-XXXXXX")
        trap '"$0/pg_ctl" -D "$d/data" -m immediate -w stop >/dev/null 2>&1 || true; rm -rf "$d"' EXIT
        trap 'exit 1' HUP INT TERM
        "$0/initdb" -D "$d/data" -U materia --auth=trust --encoding=UTF8 --locale=C.UTF-8 --no-sync >"$d/initdb.log" 2>&1 || { cat "$d/initdb.log" >&2; exit 1; }
        "$0/pg_ctl" -D "$d/data" -l "$d/log" -w -t 60 -o "-c listen_addresses='' -k $d -c fsync=off -c full_page_writes=off -c synchronous_commit=off -c max_connections=200" start >"$d/start.log" 2>&1 </dev/null || { cat "$d/start.log" "$d/log" >&2; exit 1; }
        echo "$d"
        cat >/dev/null
        """;

    private readonly Process shell;

    private LocalCluster(Process shell, string folder)
    {
        this.shell = shell;
        ConnectionString = new NpgsqlConnectionStringBuilder { Host = folder, Username = "materia", Database = "postgres" }.ToString();
    }

    /// <summary>A connection string for the cluster's database of administration.</summary>
    public string ConnectionString { get; }

    /// <summary>The folder of the newest PostgreSQL installed here, or <see langword="null"/>.</summary>
    public static string? FindBinaries()
    {
        const string Packages = "/usr/lib/postgresql";
        var packaged = Directory.Exists(Packages) ? Directory.GetDirectories(Packages) : [];
        var newestFirst = packaged
            .OrderByDescending(p => int.TryParse(Path.GetFileName(p), out var version) ? version : 0)
            .Select(p => Path.Combine(p, "bin"));
        var onPath = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return newestFirst.Concat(onPath).FirstOrDefault(p => File.Exists(Path.Combine(p, "initdb")) && File.Exists(Path.Combine(p, "pg_ctl")));
    }

    /// <summary>Makes and starts a cluster.</summary>
    /// <param name="binaries">The folder with <c>initdb</c> and <c>pg_ctl</c>.</param>
    /// <exception cref="InvalidOperationException">It did not start; the message is the programs' own.</exception>
    public static async Task<LocalCluster> StartAsync(string binaries)
    {
        string[] command = ["/bin/sh", "-c", Script, binaries];
        if (Environment.IsPrivilegedProcess)
        {
            command = ["runuser", "-u", "postgres", "--", .. command];
        }

        var start = new ProcessStartInfo(command[0], command[1..])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        var shell = Process.Start(start) ?? throw new InvalidOperationException($"{command[0]} did not start.");
        var folder = await shell.StandardOutput.ReadLineAsync();
        return folder is null
            ? throw new InvalidOperationException($"A throw-away PostgreSQL of {binaries} did not start: {await shell.StandardError.ReadToEndAsync()}")
            : new LocalCluster(shell, folder);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        NpgsqlConnection.ClearAllPools();
        shell.StandardInput.Close();
        await shell.WaitForExitAsync();
        shell.Dispose();
    }
}
