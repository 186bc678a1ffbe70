using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Materia.Benchmarks.Load;

/// <summary>The service as a process of its own, with a database file in a folder that goes when it stops.</summary>
internal sealed class ServerProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly Process process;
    private readonly string folder;

    private ServerProcess(Process process, string folder, int port, TimeSpan timeToReady)
    {
        this.process = process;
        this.folder = folder;
        Port = port;
        TimeToReady = timeToReady;
    }

    public int Port { get; }

    public TimeSpan TimeToReady { get; }

    public static async Task<ServerProcess> StartAsync()
    {
        var folder = Directory.CreateTempSubdirectory("materia-load-").FullName;
        var port = FreePort();
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Materia.Api.dll"), "--urls", $"http://127.0.0.1:{port}"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
        };
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        start.Environment["Logging__LogLevel__Default"] = "Warning";
        start.Environment["Materia__Database__ConnectionString"] = $"Data Source={Path.Combine(folder, "materia.db")}";
        start.Environment["Materia__RateLimit__PostsPerMinute"] = int.MaxValue.ToString(CultureInfo.InvariantCulture);
        var watch = Stopwatch.StartNew();
        var process = Process.Start(start) ?? throw new InvalidOperationException("The service did not start.");
        process.OutputDataReceived += static (_, _) => { };
        process.BeginOutputReadLine();
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        while (!await IsReadyAsync(client))
        {
            if (process.HasExited || watch.Elapsed > Patience)
            {
                throw new InvalidOperationException("The service did not become ready.");
            }

            await Task.Delay(20);
        }

        return new ServerProcess(process, folder, port, watch.Elapsed);
    }

    public TimeSpan ProcessorTime()
    {
        process.Refresh();
        return process.TotalProcessorTime;
    }

    public double ResidentMegabytes()
    {
        process.Refresh();
        return process.WorkingSet64 / 1e6;
    }

    public async ValueTask DisposeAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private static async Task<bool> IsReadyAsync(HttpClient client)
    {
        try
        {
            using var response = await client.GetAsync(new Uri("/health/ready", UriKind.Relative));
            return response.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
