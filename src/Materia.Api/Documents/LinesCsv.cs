using System.Globalization;
using System.Text;
using Materia.Formulation;
using Materia.Formulation.Batches;
using Materia.Formulation.Costs;
using Materia.Formulation.Sections;

namespace Materia.Api.Documents;

/// <summary>Writes the lines of a formula as CSV (RFC 4180), UTF-8, for spreadsheets.</summary>
internal static class LinesCsv
{
    /// <summary>What a cell must not begin with, or a spreadsheet takes it for a formula.</summary>
    private const string Formulas = "=+-@\t\r";

    /// <summary>The sections that the table is made of.</summary>
    public static IReadOnlyList<EvaluationSection> Sections { get; } = [FormulaSummary.Section, BatchPlan.Section, ProductCost.Section];

    /// <summary>The table.</summary>
    public static byte[] Write(Evaluation evaluation)
    {
        var lines = evaluation.Of(FormulaSummary.Section)!.Lines;
        var batch = evaluation.Of(BatchPlan.Section) is { Lines.Count: > 0 } plan ? plan : null;
        var cost = evaluation.Of(ProductCost.Section) is { Lines.Count: > 0 } priced ? priced : null;
        var text = new StringBuilder();
        Row(text, ["line", "ingredient", "own", "name", "inci_name", "phase", "percent", "mass", "unit", "percent_achieved", "cost", "currency"]);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, weighed) = (lines[i], batch?.Lines[i]);
            var price = cost?.Lines.FirstOrDefault(c => c.Percent == line.Percent && c.Ingredient == line.Ingredient && c.Own == line.Own);
            Row(text,
            [
                Number(i + 1), line.Ingredient, line.Own, line.Label ?? line.Name, line.InciName, line.Phase is { } phase ? Catalogue.KebabCase<Phase>.Word(phase) : null,
                Number(line.Percent), weighed is null ? null : Number(weighed.Mass.Value), weighed?.Mass.Unit, weighed is null ? null : Number(weighed.PercentAchieved),
                price is null ? null : Number((price.InBatch ?? price.InHundredGrams).Value), price is null ? null : cost!.Currency,
            ]);
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Row(StringBuilder text, IEnumerable<string?> cells) => text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    private static string Cell(string? value)
    {
        var cell = PaperText.OneLine(value ?? "");
        var safe = cell.Length > 0 && Formulas.Contains(cell[0], StringComparison.Ordinal) && !decimal.TryParse(cell, NumberStyles.Number, CultureInfo.InvariantCulture, out _) ? "'" + cell : cell;
        return safe.AsSpan().IndexOfAny("\",\r\n") >= 0 ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }

    private static string Number(decimal value) => value.ToString("0.############", CultureInfo.InvariantCulture);
}
