using System.Globalization;
using System.Text;

namespace Materia.Tests.Search.Judgements;

/// <summary>The tables of docs/search-quality.md.</summary>
internal static class QualityTables
{
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        ["tune"] = Table(tuning: true),
        ["report"] = Table(tuning: false),
        ["misses"] = Misses(),
    };

    private static string Table(bool tuning)
    {
        var half = Verdict.All.Where(v => v.Judgement.IsForTuning == tuning).ToList();
        var text = new StringBuilder("| class | queries | mean reciprocal rank | first | among 3 | among 10 |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (var ofClass in half.GroupBy(v => v.Judgement.Class))
        {
            Row(text, ofClass.Key, [.. ofClass]);
        }

        Row(text, "all", half);
        return text.ToString().TrimEnd('\n');
    }

    private static void Row(StringBuilder text, string name, List<Verdict> verdicts) => text.Append(
        CultureInfo.InvariantCulture,
        $"| {name} | {verdicts.Count} | {verdicts.Average(v => v.Reciprocal):0.000} | {Within(verdicts, 1):0} % | {Within(verdicts, 3):0} % | {Within(verdicts, 10):0} % |\n");

    private static double Within(List<Verdict> verdicts, int places) => 100.0 * verdicts.Count(v => v.Place <= places) / verdicts.Count;

    private static string Misses()
    {
        var text = new StringBuilder("| class | query | meant | place | first instead | half |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (var (judgement, place, first) in Verdict.All.Where(v => v.Place != 1))
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"| {judgement.Class} | `{judgement.Query}` | {judgement.Expected} | {(place is { } p ? p.ToString(CultureInfo.InvariantCulture) : "–")} | {first ?? "nothing"} | {(judgement.IsForTuning ? "tune" : "report")} |\n");
        }

        return text.ToString().TrimEnd('\n');
    }
}
