using System.Globalization;
using System.Text;
using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>The report for people.</summary>
internal static class ReportText
{
    private const int MostIds = 5;

    private static readonly string[] GradeColumns = ["published", "secondary", "common-practice", "memory", "sourced %"];

    /// <summary>The report as text, its last line ended.</summary>
    public static string Write(CatalogueReport report)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{report.Ingredients} ingredients. Figures are properties and shares of fatty acids, triacylglycerols and constituents; usage levels are counted apart.\n");
        text.Append("sourced % is the share of published and secondary statements. Lipids are ")
            .AppendJoin(", ", report.LipidKinds.Select(KebabCase<IngredientKind>.Word)).Append(".\n\n");
        Grades(report, text);
        Kinds(report, text);
        Measures(report, text);
        Conflicts(report, text);
        Gains(report, text);
        return text.ToString();
    }

    private static void Grades(CatalogueReport report, StringBuilder text)
    {
        var table = new TextTable(["", "all", "published", "%", "secondary", "%", "common-practice", "%", "memory", "%", "sourced %"]);
        Row("figures of lipids", report.LipidFigures);
        Row("figures of all", report.Figures);
        Row("usage levels", report.UsageLevels);
        Row("all statements", report.Statements);
        table.Write(text);

        void Row(string what, GradeCounts counts) => table.Add(
            [what, counts.Total, .. Enum.GetValues<Evidence>().SelectMany(e => new object?[] { counts[e], counts.Percent(counts[e]) }), counts.Sourced]);
    }

    private static void Kinds(CatalogueReport report, StringBuilder text)
    {
        var table = new TextTable(["kind", "ingredients", "figures", .. GradeColumns]);
        foreach (var kind in report.Kinds)
        {
            table.Add([KebabCase<IngredientKind>.Word(kind.Kind), kind.Ingredients, .. Counts(kind.Figures)]);
        }

        text.Append("\nFigures by kind\n");
        table.Write(text);
    }

    private static void Measures(CatalogueReport report, StringBuilder text)
    {
        var table = new TextTable(["kind", "measure", "have it", "lack it", "statements", .. GradeColumns]);
        foreach (var measure in report.Measures)
        {
            table.Add([KebabCase<IngredientKind>.Word(measure.Kind), measure.Measure, measure.Present, measure.Missing, .. Counts(measure.Grades)]);
        }

        text.Append("\nBy kind and property (lack it: only where it is expected of the kind)\n");
        table.Write(text);
    }

    private static void Conflicts(CatalogueReport report, StringBuilder text)
    {
        text.Append(CultureInfo.InvariantCulture, $"\nConflicts between sources (no value in common): {report.Conflicts.Count}\n");
        var table = new TextTable("ingredient", "figure", "low", "high", "source", "grade", "used");
        foreach (var (conflict, figure) in report.Conflicts.SelectMany(c => c.Figures.Select(f => (c, f))))
        {
            table.Add(conflict.Ingredient, conflict.Subject, figure.Low, figure.High, figure.Source, KebabCase<Evidence>.Word(figure.Evidence), figure.Used ? "used" : "");
        }

        table.Write(text);
    }

    private static void Gains(CatalogueReport report, StringBuilder text)
    {
        text.Append("\nWhat would raise the catalogue most\n").Append(Gain.Rule).Append('\n');
        var table = new TextTable("class", "kind", "measure", "missing", "from memory", "which");
        foreach (var gain in report.Gains)
        {
            var ids = gain.Missing.Concat(gain.Recalled).ToList();
            var which = string.Join(", ", ids.Take(MostIds)) + (ids.Count > MostIds ? ", …" : "");
            table.Add(gain.Class, KebabCase<IngredientKind>.Word(gain.Kind), gain.Measure, gain.Missing.Count, gain.Recalled.Count, which);
        }

        table.Write(text);
    }

    private static object?[] Counts(GradeCounts counts) =>
        [counts.Total, .. Enum.GetValues<Evidence>().Select(e => (object?)counts[e]), counts.Sourced];
}
