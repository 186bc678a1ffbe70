using System.Text.RegularExpressions;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>Keeps the tables of docs/melting-accuracy.md what the code computes.</summary>
public sealed partial class AccuracyTableTests
{
    private const string Switch = "MATERIA_WRITE_DOCS";

    [Fact]
    public async Task Document_Tables_AreWhatTheCodeComputes()
    {
        var cancel = TestContext.Current.CancellationToken;
        var path = Path.Combine(CheckFiles.Root(), "docs", "melting-accuracy.md");
        var committed = (await File.ReadAllTextAsync(path, cancel)).ReplaceLineEndings("\n");
        var tables = AccuracyTables.All;
        Place().Matches(committed).Select(m => m.Groups[1].Value).ShouldBe(tables.Keys, ignoreOrder: true);
        var current = Place().Replace(committed, m => $"<!-- table {m.Groups[1].Value} -->\n{tables[m.Groups[1].Value]}\n<!-- end -->");
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            await File.WriteAllTextAsync(path, current, cancel);
            return;
        }

        // Line by line: the whole text would drown what changed.
        var changed = current.Split('\n').Except(committed.Split('\n'), StringComparer.Ordinal).Concat(committed.Split('\n').Except(current.Split('\n'), StringComparer.Ordinal));
        (current == committed).ShouldBeTrue($"run with {Switch}=1 to rewrite docs/melting-accuracy.md, and look at what changed: {string.Join('\n', changed.Take(20))}");
    }

    [GeneratedRegex(@"<!-- table (\w+) -->\n.*?<!-- end -->", RegexOptions.Singleline)]
    private static partial Regex Place();
}
