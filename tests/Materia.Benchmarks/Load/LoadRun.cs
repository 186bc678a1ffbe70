using System.Globalization;

namespace Materia.Benchmarks.Load;

/// <summary>
/// Starts the service as a process of its own on an empty SQLite database, waits until it is ready, then sends bounded
/// loopback traffic and prints, for each kind of request, requests per second, processor time on the server, and the ratio
/// to a constant-JSON endpoint of the same server in the same run.
/// </summary>
internal static class LoadRun
{
    private const int Connections = 16;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(4);
    private static readonly TimeSpan Measured = TimeSpan.FromSeconds(5);

    public static async Task<int> RunAsync(string[] args)
    {
        if (args.Length > 0)
        {
            Console.Error.WriteLine("load takes no arguments");
            return 2;
        }

        await using var server = await ServerProcess.StartAsync();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"ready after {server.TimeToReady.TotalSeconds:F2} s, resident {server.ResidentMegabytes():F0} MB"));

        var constant = await MeasureAsync(server, Requests.Constant);
        Print("constant JSON", constant, constant);
        Print("record", await MeasureAsync(server, Requests.Record), constant);
        Print("search", await MeasureAsync(server, Requests.Search), constant);
        Print("search, 20 hits", await MeasureAsync(server, Requests.SearchFullPage), constant);
        Print("evaluation", await MeasureAsync(server, Requests.Evaluation), constant);
        Print("constant again", await MeasureAsync(server, Requests.Constant), constant);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"resident {server.ResidentMegabytes():F0} MB"));
        return 0;
    }

    private static async Task<Throughput> MeasureAsync(ServerProcess server, byte[] request)
    {
        await Traffic.SendAsync(server.Port, request, Connections, WarmUp);
        var before = server.ProcessorTime();
        var (count, elapsed) = await Traffic.SendAsync(server.Port, request, Connections, Measured);
        var processor = server.ProcessorTime() - before;
        return new Throughput(count / elapsed.TotalSeconds, processor.TotalMilliseconds / count);
    }

    private static void Print(string name, Throughput measured, Throughput constant) =>
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name,-15} {measured.RequestsPerSecond,9:F0} requests/s  {measured.ProcessorMilliseconds,7:F4} ms of CPU each  {measured.RequestsPerSecond / constant.RequestsPerSecond,6:P0} of the constant endpoint"));

    private sealed record Throughput(double RequestsPerSecond, double ProcessorMilliseconds);
}
