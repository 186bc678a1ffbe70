using System.Globalization;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>The tables of docs/melting-accuracy.md.</summary>
internal static class AccuracyTables
{
    /// <summary>The tables by the name of their place in the document.</summary>
    public static IReadOnlyDictionary<string, string> All => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["summary"] = Summary(),
        ["temperatures"] = Temperatures(),
        ["systems"] = Systems(),
        ["solid"] = Solid(),
        ["melting"] = Figures("°C", r => FatPredictions.Melting(r)),
        ["eutectics"] = Figures("", r => EutecticPredictions.Find(r)),
        ["pure"] = Figures("", r => PurePredictions.Find(r)),
        ["waxes"] = Figures("J/g", r => FatPredictions.Heat(r)),
        ["misses"] = Table("| row | printed | reason |", KnownMisses.ById.Select(m => $"| {MeltingFiles.Find(m.Key).Title} | {MeltingFiles.Find(m.Key).Text} | {m.Value} |")),
        ["unpredicted"] = Unpredicted(),
    };

    private static string Summary() => Table(
        "| rows | number | mean absolute error | worst | inside the band | mean width of the band |",
        AccuracyFigures.Groups.Append(AccuracyFigures.AllCurves).Select(g => Line($"| {g.Group} | {g.Points.Count} | {g.MeanAbsoluteError:0.0} | {g.Worst.Error:0.0} ({g.Worst.Row.System} at {g.Worst.Row.Temperature} °C) | {100 * g.InsideBand:0} % | {g.MeanWidth:0.0} |")));

    private static string Temperatures() => Table(
        "| check rows | number | mean distance from print | worst | within |",
        [
            Distances("slip points and melting ranges of whole fats [°C]", 2, FatPredictions.Melting, r => !r.System.EndsWith(" wax", StringComparison.Ordinal)),
            Distances("eutectic temperatures of free acids [°C]", 3, EutecticPredictions.Find, r => r.Unit == "degC"),
            Distances("melting points of triacylglycerols, beta [°C]", 2, PurePredictions.Find, r => r.Quantity is "Tm beta" or "Tm beta1" && r.Unit == "degC"),
            Distances("melting points of triacylglycerols, alpha and beta-prime [°C]", 4, PurePredictions.Find, r => r.Quantity.StartsWith("Tm ", StringComparison.Ordinal) && r.Quantity is not ("Tm beta" or "Tm beta1")),
        ]);

    private static string Distances(string group, double within, Func<MeltingRow, double?> predict, Func<MeltingRow, bool> which)
    {
        var rows = MeltingFiles.Rows.Where(r => r.IsCheck && r.Printed is not null && which(r)).Select(r => (Row: r, Value: predict(r))).Where(p => p.Value is not null)
            .Select(p => (p.Row, Distance: p.Row.Distance(p.Value!.Value))).ToList();
        var worst = rows.MaxBy(r => r.Distance);
        return Line($"| {group} | {rows.Count} | {rows.Average(r => r.Distance):0.0} | {worst.Distance:0.0} ({worst.Row.Id}, {worst.Row.System}) | {rows.Count(r => r.Distance <= within)} of {rows.Count} within {within} |");
    }

    private static string Systems() => Table(
        "| system | role | grade | rows | mean absolute error | worst | inside the band |",
        AccuracyFigures.Groups.SelectMany(g => g.Points.GroupBy(p => p.Row.System).Select(s =>
        {
            var one = new AccuracyFigures(s.Key, [.. s]);
            var row = s.First().Row;
            return Line($"| {s.Key}{(row.Quantity == "SFI" ? " (index)" : "")} | {row.Role} | {row.Grade} | {s.Count()} | {one.MeanAbsoluteError:0.0} | {one.Worst.Error:0.0} at {one.Worst.Row.Temperature} °C | {100 * one.InsideBand:0} % |");
        })));

    private static string Solid() => Table(
        "| row | system | °C | printed % | predicted % | band | error | grade | role |",
        AccuracyFigures.Groups.SelectMany(g => g.Points.Select(p => Line(
            $"| {p.Row.Id} | {p.Row.System}{(p.Row.Quantity == "SFI" ? " (index)" : "")} | {p.Row.Temperature} | {p.Row.Text} | {p.Computed.Percent:0.0} | {p.Computed.Low:0.0} to {p.Computed.High:0.0}{(AccuracyFigures.IsInside(p) ? "" : " (outside)")} | {p.Computed.Percent - p.Row.Printed!.Value.Low:+0.0;-0.0;0.0} | {p.Row.Grade} | {p.Row.Role} |"))));

    private static string Figures(string unit, Func<MeltingRow, double?> predict) => Table(
        "| row | system | quantity | printed | predicted | off by | tolerance | grade | role |",
        MeltingFiles.Rows.Where(r => r.Printed is not null).Select(r => (Row: r, Value: predict(r))).Where(p => p.Value is not null).Select(p => Line(
            $"| {p.Row.Id} | {p.Row.System} | {p.Row.Quantity} | {p.Row.Text} {(unit.Length > 0 ? unit : Unit(p.Row.Unit))} | {p.Value:0.0} | {p.Row.Distance(p.Value!.Value):0.0} | {p.Row.Tolerance}{(KnownMisses.ById.ContainsKey(p.Row.Id) ? " (missed)" : "")} | {p.Row.Grade} | {p.Row.Role} |")));

    private static string Unpredicted() => Table(
        "| rows | system | quantity | grade |",
        MeltingFiles.Rows.Where(r => r.Role == "comparison" && !IsPredicted(r)).GroupBy(r => (r.System, r.Quantity, r.Grade)).Select(g =>
            $"| {string.Join(", ", g.Select(r => r.Id))} | {g.Key.System} | {g.Key.Quantity} | {g.Key.Grade} |"));

    private static bool IsPredicted(MeltingRow row) => row.Printed is not null
        && (FatPredictions.Melting(row) ?? FatPredictions.Heat(row) ?? PurePredictions.Find(row) ?? EutecticPredictions.Find(row)) is not null
        || FatPredictions.Solid(row) is not null;

    private static string Unit(string unit) => unit == "degC" ? "°C" : unit;

    private static string Table(string header, IEnumerable<string> lines) =>
        string.Join('\n', [header, "|" + string.Concat(Enumerable.Repeat(" --- |", header.Count(c => c == '|') - 1)), .. lines]);

    private static string Line(FormattableString line) => line.ToString(CultureInfo.InvariantCulture);
}
