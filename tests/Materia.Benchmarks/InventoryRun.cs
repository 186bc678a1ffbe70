using System.Diagnostics;
using System.Globalization;
using Materia.Catalogue;
using Materia.Catalogue.Inventory;
using Materia.Search;
using Materia.Search.Inventory;
using Materia.Seed.Inventory;

namespace Materia.Benchmarks;

/// <summary>
/// Measures the inventory of names in process: reading a file, building the index, and searching it for pieces of its own names, as
/// typed, unfinished and misspelled.
/// </summary>
internal static class InventoryRun
{
    private const int Searches = 5000;

    /// <summary>Runs on the file that the command line names and prints what was measured.</summary>
    public static int Run(string[] args)
    {
        if (args is not [var path] || !File.Exists(path))
        {
            Console.Error.WriteLine("name the inventory's CSV file");
            return 2;
        }

        var before = GC.GetTotalMemory(forceFullCollection: true);
        var (file, reading) = Timed(() => InventoryReader.Read(path));
        if (file.Entries is not { } entries)
        {
            Console.Error.WriteLine(string.Join('\n', file.Faults));
            return 1;
        }

        var inventory = new NameInventory(entries, CatalogueJson.InventoryChecksum(entries), DateTimeOffset.UnixEpoch);
        var (index, building) = Timed(() => InventoryIndex.Build(inventory));
        using (index)
        {
            var held = (GC.GetTotalMemory(forceFullCollection: true) - before) / 1024.0 / 1024.0;
            Print($"{entries.Count} entries, {file.Faults.Count} faults: read in {reading:0} ms, index built in {building:0} ms, {held:0} MB held");
            var random = new Random(1);
            var texts = Enumerable.Range(0, Searches + 200).Select(_ => Typed(entries[random.Next(entries.Count)].InciName, random)).ToList();
            texts.Take(200).ToList().ForEach(t => index.Search(new InventoryRequest { Text = t }));
            var times = texts.Skip(200).Select(t => Timed(() => index.Search(new InventoryRequest { Text = t })).Milliseconds).Order().ToList();
            Print($"{Searches} searches: median {times[Searches / 2]:0.00} ms, p95 {times[Searches * 95 / 100]:0.00} ms, p99 {times[Searches * 99 / 100]:0.00} ms, longest {times[^1]:0.00} ms");
        }

        return 0;
    }

    // A third each as it stands, with the last word cut short, and with two letters swapped.
    private static string Typed(string name, Random random)
    {
        var text = name.Length > SearchRequest.LongestText ? name[..SearchRequest.LongestText] : name;
        var at = random.Next(1, Math.Max(2, text.Length - 1));
        return random.Next(3) switch
        {
            0 => text,
            1 => text[..Math.Max(1, text.Length - random.Next(1, 6))],
            _ => text.Length < 4 ? text : string.Concat(text.AsSpan(0, at - 1), text.AsSpan(at, 1), text.AsSpan(at - 1, 1), text.AsSpan(at + 1)),
        };
    }

    private static (T Result, double Milliseconds) Timed<T>(Func<T> work)
    {
        var start = Stopwatch.GetTimestamp();
        var result = work();
        return (result, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
