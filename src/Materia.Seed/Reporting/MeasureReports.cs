using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>Counts the measures of a kind: those expected of it in their order, then the figures that it carries besides.</summary>
internal static class MeasureReports
{
    /// <summary>The reports of one kind.</summary>
    public static IEnumerable<MeasureReport> Of(IGrouping<IngredientKind, Ingredient> kind)
    {
        var expected = ExpectedMeasures.Of(kind.Key).ToList();
        foreach (var measure in expected)
        {
            yield return Report(kind, measure.Name, kind.Select(i => measure.Statements(i).ToList()).ToList(), isExpected: true);
        }

        var names = expected.Select(m => m.Name).ToHashSet(StringComparer.Ordinal);
        var others = kind
            .SelectMany(i => Measure.Figures(i).Where(f => !names.Contains(f.Name)).GroupBy(f => f.Name, f => f.Figure, StringComparer.Ordinal))
            .GroupBy(g => g.Key, g => g.ToList(), StringComparer.Ordinal)
            .OrderBy(g => g.Key, StringComparer.Ordinal);
        foreach (var other in others)
        {
            yield return Report(kind, other.Key, [.. other], isExpected: false);
        }
    }

    private static MeasureReport Report(
        IGrouping<IngredientKind, Ingredient> kind, string measure, List<List<Statement>> ingredients, bool isExpected)
    {
        var present = ingredients.Count(s => s.Count > 0);
        return new MeasureReport
        {
            Kind = kind.Key,
            Measure = measure,
            Present = present,
            Missing = isExpected ? kind.Count() - present : null,
            Grades = GradeCounts.Of(ingredients.SelectMany(s => s)),
        };
    }
}
