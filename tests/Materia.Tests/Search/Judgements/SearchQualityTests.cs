using System.Text.RegularExpressions;
using Materia.Tests.Checks;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Search.Judgements;

/// <summary>Holds the search to what makers mean, and docs/search-quality.md to what the search does.</summary>
public sealed partial class SearchQualityTests
{
    private const string Switch = "MATERIA_WRITE_DOCS";

    // The bars of the issue that asked for this list.
    private const double LeastReciprocalRank = 0.95;
    private const int LeastJudgements = 250;

    [Fact]
    public void Judgements_AreManyDistinctAndOfKnownIngredients()
    {
        Judgement.All.Count.ShouldBeGreaterThan(LeastJudgements);
        Judgement.All.Select(j => j.Query).ShouldBeUnique();
        Judgement.All.Where(j => SeedCatalogue.Release.FindIngredient(j.Expected) is null).ShouldBeEmpty();
    }

    [Fact]
    public void Search_HalfThatOnlyReports_HoldsTheFloor()
    {
        var report = Verdict.All.Where(v => !v.Judgement.IsForTuning).ToList();

        report.Average(v => v.Reciprocal).ShouldBeGreaterThanOrEqualTo(LeastReciprocalRank, QualityTables.All["misses"]);
    }

    [Theory]
    [InlineData("exact")]
    [InlineData("inci")]
    public void Search_ExactNames_AreAlwaysFirst(string ofClass) =>
        Verdict.All.Where(v => v.Judgement.Class == ofClass && v.Place != 1).ShouldBeEmpty();

    [Fact]
    public async Task Document_Tables_AreWhatTheSearchDoes()
    {
        var cancel = TestContext.Current.CancellationToken;
        var path = Path.Combine(CheckFiles.Root(), "docs", "search-quality.md");
        var committed = (await File.ReadAllTextAsync(path, cancel)).ReplaceLineEndings("\n");
        var tables = QualityTables.All;
        Place().Matches(committed).Select(m => m.Groups[1].Value).ShouldBe(tables.Keys, ignoreOrder: true);
        var current = Place().Replace(committed, m => $"<!-- table {m.Groups[1].Value} -->\n{tables[m.Groups[1].Value]}\n<!-- end -->");
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            await File.WriteAllTextAsync(path, current, cancel);
            return;
        }

        var changed = current.Split('\n').Except(committed.Split('\n'), StringComparer.Ordinal);
        (current == committed).ShouldBeTrue($"run with {Switch}=1 to rewrite docs/search-quality.md, and look at what changed: {string.Join('\n', changed.Take(20))}");
    }

    [GeneratedRegex(@"<!-- table (\w+) -->\n.*?<!-- end -->", RegexOptions.Singleline)]
    private static partial Regex Place();
}
