using System.Globalization;
using CsvHelper;

namespace Materia.Tests.Checks;

/// <summary>Reads the check values beside this file.</summary>
internal static class CheckFiles
{
    private static readonly Lazy<IReadOnlyList<CheckRow>> LoadedProperties = new(() => [.. Read("properties.csv", r => new CheckRow(
        r.GetField("id")!,
        r.GetField("system")!,
        r.GetField("quantity")!,
        r.GetField("temperature_C") is { Length: > 0 } t ? double.Parse(t, CultureInfo.InvariantCulture) : null,
        r.GetField("value")!,
        Tolerance.Parse(r.GetField("tolerance_suggestion")!),
        r.GetField("seen")!,
        r.GetField("note")!))]);

    private static readonly Lazy<ILookup<string, (string Acid, double Percent)>> LoadedCompositions = new(() =>
        Read("properties-compositions.csv", r => (Key: r.GetField("key")!, Acid: r.GetField("fatty_acid")!, Percent: Number(r.GetField("wt_percent")!)))
            .ToLookup(r => r.Key, r => (r.Acid, r.Percent)));

    public static IReadOnlyList<CheckRow> Properties => LoadedProperties.Value;

    /// <summary>The compositions by sample.</summary>
    public static ILookup<string, (string Acid, double Percent)> Compositions => LoadedCompositions.Value;

    public static IReadOnlyList<(IReadOnlyDictionary<string, double> Acids, string Class)> CommercialOils() =>
        [.. Read("commercial-oils.csv", r => ((IReadOnlyDictionary<string, double>)new Dictionary<string, double>
        {
            ["16:0"] = Number(r.GetField("palmitic")!),
            ["18:0"] = Number(r.GetField("stearic")!),
            ["18:1"] = Number(r.GetField("oleic")!),
            ["18:2"] = Number(r.GetField("linoleic")!),
            ["18:3"] = Number(r.GetField("linolenic")!),
            ["20:0"] = Number(r.GetField("eicosanoic")!),
            ["20:1"] = Number(r.GetField("eicosenoic")!),
        }, r.GetField("class")!))];

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

    private static List<T> Read<T>(string file, Func<CsvReader, T> row)
    {
        using var text = new StreamReader(Path.Combine(Root(), "tests", "Materia.Tests", "Checks", file));
        using var csv = new CsvReader(text, CultureInfo.InvariantCulture);
        csv.Read();
        csv.ReadHeader();
        var rows = new List<T>();
        while (csv.Read())
        {
            rows.Add(row(csv));
        }

        return rows;
    }
}
