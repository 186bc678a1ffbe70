using System.Globalization;
using CsvHelper;

namespace Materia.Tests.Checks;

/// <summary>Reads the check values beside this file.</summary>
internal static class CheckFiles
{
    private static readonly Lazy<IReadOnlyList<CheckRow>> LoadedProperties = new(() => [.. Read("properties.csv", r => new CheckRow(
        r["id"],
        r["system"],
        r["quantity"],
        r["temperature_C"] is { Length: > 0 } t ? double.Parse(t, CultureInfo.InvariantCulture) : null,
        r["value"],
        Tolerance.Parse(r["tolerance_suggestion"]),
        r["seen"],
        r["note"]))]);

    private static readonly Lazy<ILookup<string, (string Acid, double Percent)>> LoadedCompositions = new(() =>
        Read("properties-compositions.csv", r => (Key: r["key"], Acid: r["fatty_acid"], Percent: Number(r["wt_percent"])))
            .ToLookup(r => r.Key, r => (r.Acid, r.Percent)));

    public static IReadOnlyList<CheckRow> Properties => LoadedProperties.Value;

    /// <summary>The compositions by sample.</summary>
    public static ILookup<string, (string Acid, double Percent)> Compositions => LoadedCompositions.Value;

    public static IReadOnlyList<(IReadOnlyDictionary<string, double> Acids, string Class)> CommercialOils() =>
        [.. Read("commercial-oils.csv", r => ((IReadOnlyDictionary<string, double>)new Dictionary<string, double>
        {
            ["16:0"] = Number(r["palmitic"]),
            ["18:0"] = Number(r["stearic"]),
            ["18:1"] = Number(r["oleic"]),
            ["18:2"] = Number(r["linoleic"]),
            ["18:3"] = Number(r["linolenic"]),
            ["20:0"] = Number(r["eicosanoic"]),
            ["20:1"] = Number(r["eicosenoic"]),
        }, r["class"]))];

    /// <summary>The root of the repository, found upwards from the test's own directory.</summary>
    public static string Root()
    {
        for (var directory = new DirectoryInfo(AppContext.BaseDirectory); directory is not null; directory = directory.Parent)
        {
            if (File.Exists(Path.Combine(directory.FullName, "Materia.sln")))
            {
                return directory.FullName;
            }
        }

        throw new DirectoryNotFoundException("No Materia.sln above the tests.");
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    public static List<T> Read<T>(string file, Func<IReadOnlyDictionary<string, string>, T> row)
    {
        var rows = new List<T>();
        using var csv = CsvReader.Create(File.ReadAllBytes(Path.Combine(Root(), "tests", "Materia.Tests", "Checks", file)), new CsvReaderOptions { Separator = ',', HasHeader = false, TrackLineNumbers = true });
        var header = csv.Read() ? csv.Current.ToArray() : [];
        while (csv.Read())
        {
            var fields = csv.Current.ToArray();
            fields.Length.ShouldBe(header.Length, $"{file}, line {csv.LineNumber}");
            rows.Add(row(header.Zip(fields).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal)));
        }

        return rows;
    }
}
