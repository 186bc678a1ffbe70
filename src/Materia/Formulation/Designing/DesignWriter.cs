using System.Globalization;
using Materia.Formulation.Optimising;
using Materia.Formulation.Substituting;
using Materia.Regulation.Limits;

namespace Materia.Formulation.Designing;

/// <summary>Writes a formula found out, with how it stands to the targets.</summary>
internal static class DesignWriter
{
    /// <summary>What rounding of printed figures leaves of a range's end, in noticeable steps.</summary>
    private const double Slack = 1e-6;

    /// <summary>The proposal.</summary>
    public static DesignProposal Write(DesignCase request, DesignSearch search, Draft draft)
    {
        var count = request.Targets.Count;
        var (values, covers) = (new double[count], new double[count]);
        search.Model.At([.. draft.Shares.Select(s => (double)s)], values, covers);
        return new DesignProposal
        {
            Formula = new Formula
            {
                Title = request.Request.Title,
                Use = request.Request.Use,
                Market = request.Request.Market,
                Lines = [.. Enumerable.Range(0, draft.Shares.Length).Where(j => draft.Shares[j] > 0).OrderByDescending(j => draft.Shares[j]).ThenBy(j => j).Select(j => Line(request, j, draft.Shares[j]))],
            },
            Distance = Math.Round(draft.Distance, 3),
            Targets = [.. request.Targets.Select((t, i) => Result(t, values[i], covers[i]))],
            Warnings = [.. Warnings(request, search, draft)],
        };
    }

    private static FormulaLine Line(DesignCase request, int column, decimal percent)
    {
        var name = request.Columns[column].Name;
        return request.Own.TryGetValue(name, out var own) ? new FormulaLine { Own = own, Percent = percent } : new FormulaLine { Ingredient = name, Percent = percent };
    }

    private static TargetResult Result(AimedFigure target, double value, double cover)
    {
        var outside = Math.Max(0, Math.Max(target.Low - value, value - target.High)) / target.Step;
        return new TargetResult(
            target.Figure.Name,
            double.IsFinite(target.Low) ? target.Figure.Printed(target.Low) : null,
            double.IsFinite(target.High) ? target.Figure.Printed(target.High) : null,
            double.IsNaN(value) ? null : target.Figure.Printed(value),
            target.Figure.Unit,
            outside <= (target.IsValue ? 0.5 : Slack),
            Math.Round(cover, 4));
    }

    private static IEnumerable<string> Warnings(DesignCase request, DesignSearch search, Draft draft)
    {
        for (var j = 0; j < draft.Shares.Length; j++)
        {
            var column = request.Columns[j];
            if (draft.Shares[j] > 0 && UsageCeilings.Of(column.Ingredient, request.Use) is { } most && (double)draft.Shares[j] > most)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{column.Name} at {draft.Shares[j]:0.#} % stands above its usual share of up to {most:0.##} %.");
            }

            foreach (var caution in draft.Shares[j] > 0 ? column.Ingredient.Cautions.Take(2) : [])
            {
                yield return $"{column.Name}: {caution.Text}";
            }
        }

        foreach (var finding in search.Guard.All(draft.Shares).Where(f => f.Status is LimitStatus.Near or LimitStatus.Exceeded))
        {
            yield return $"{finding.Substance}: {Catalogue.KebabCase<LimitStatus>.Word(finding.Status)} by {finding.Instrument}; see the limits section of an evaluation.";
        }
    }
}
