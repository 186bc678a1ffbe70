using System.Globalization;

namespace Materia.Tests.Checks;

/// <summary>Reads the check values on melting beside this file.</summary>
internal static class MeltingFiles
{
    private static readonly Lazy<IReadOnlyList<MeltingRow>> Loaded = new(() =>
    [
        .. CheckFiles.Read("melting.csv", Row),
        .. CheckFiles.Read("melting-literature.csv", Row),
        .. CheckFiles.Read("solid-fat-sfc.csv", r => new MeltingRow(
            r["id"], r["sample_id"], "SFC", Number(r["temperature_C"]), r["sfc_percent"], "%", null, r["source"], r["seen"], r["role"])),

        // These rows come without a tolerance; the 2 °C asked of slip points stands in, and only those are checks.
        .. CheckFiles.Read("solid-fat-melting.csv", r => new MeltingRow(
            r["id"], r["sample_id"], r["quantity"], null, r["value"], r["unit"], 2, r["source"], r["seen"], r["role"])),
    ]);

    private static readonly Lazy<ILookup<string, (string Basis, string Component, string Percent)>> LoadedCompositions = new(() =>
        new[] { "melting-compositions.csv", "melting-literature-compositions.csv", "solid-fat-compositions.csv" }
            .SelectMany(f => CheckFiles.Read(f, r => (Key: r["sample_id"], Basis: r["basis"], Component: r["component"], Percent: r["percent"])))
            .ToLookup(r => r.Key, r => (r.Basis, r.Component, r.Percent)));

    public static IReadOnlyList<MeltingRow> Rows => Loaded.Value;

    /// <summary>The compositions as printed, by sample.</summary>
    public static ILookup<string, (string Basis, string Component, string Percent)> Compositions => LoadedCompositions.Value;

    public static MeltingRow Find(string id) => Rows.Single(r => r.Id == id);

    private static MeltingRow Row(IReadOnlyDictionary<string, string> r) => new(
        r["id"], r["system"], r["quantity"], Number(r["temperature_C"]), r["value"], r["unit"], Number(r["tolerance_suggestion"]), r["source"], r["seen"], r["role"]);

    private static double? Number(string text) => text.Length > 0 ? double.Parse(text, CultureInfo.InvariantCulture) : null;
}
