using Materia.Chemistry;
using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>Writes a draft out: the formula with its lines in place, the figures before and after, what to notice and to look at.</summary>
internal sealed class ProposalWriter
{
    private readonly SubstitutionCase request;
    private readonly SubstitutionSearch search;
    private readonly double[] before;

    public ProposalWriter(SubstitutionCase request, SubstitutionSearch search)
    {
        this.request = request;
        this.search = search;
        before = Figures([.. request.Formula.Lines.Select(l => l.Percent), .. new decimal[search.Columns.Count - search.Lines.Count]]);
    }

    /// <summary>The proposal.</summary>
    public SubstitutionProposal Write(Draft draft)
    {
        var formula = FormulaOf(draft);
        var normalised = NormalisedFormula.Create(formula, request.Release).Formula
            ?? throw new InvalidOperationException("A proposal does not hold together.");
        var differences = Differences(draft, normalised);
        return new SubstitutionProposal
        {
            Formula = formula,
            Distance = Math.Round(draft.Distance, 3),
            Differences = differences,
            Notice = Notices.Of(differences),
            Warnings = ProposalWarnings.Of(request, search, draft),
        };
    }

    private Formula FormulaOf(Draft draft)
    {
        var lines = new List<FormulaLine>();
        var came = false;
        for (var i = 0; i < search.Lines.Count; i++)
        {
            var submitted = request.Submitted.Lines[i];
            if (!request.Without.Contains(search.Lines[i].Name))
            {
                if (draft.Shares[i] > 0)
                {
                    lines.Add(submitted with { Percent = draft.Shares[i], Mass = null, Unit = null, Balance = null });
                }
            }
            else if (!came)
            {
                // What comes in stands where the first missing line stood.
                came = true;
                lines.AddRange(Incoming(draft).Select(j => LineOf(j, draft.Shares[j]) with { Phase = submitted.Phase }));
            }
        }

        return request.Submitted with { Lines = lines };
    }

    private IEnumerable<int> Incoming(Draft draft) =>
        Enumerable.Range(search.Lines.Count, search.Columns.Count - search.Lines.Count).Where(j => draft.Shares[j] > 0).OrderByDescending(j => draft.Shares[j]).ThenBy(j => j);

    private FormulaLine LineOf(int column, decimal percent)
    {
        var name = search.Columns[column].Name;
        return request.Own.TryGetValue(name, out var own) ? new FormulaLine { Own = own, Percent = percent } : new FormulaLine { Ingredient = name, Percent = percent };
    }

    private double[] Figures(decimal[] shares)
    {
        var (values, covers) = (new double[search.Model.Figures.Count], new double[search.Model.Figures.Count]);
        search.Model.At([.. shares.Select(s => (double)s)], values, covers);
        return values;
    }

    private List<FigureDifference> Differences(Draft draft, NormalisedFormula normalised)
    {
        var after = Figures(draft.Shares);
        var flow = BlendFlow.Of(normalised.Blend(request.Release)).Viscosity.Select(v => v.Temperature).ToList();
        var differences = new List<FigureDifference>();
        for (var f = 0; f < after.Length; f++)
        {
            var figure = search.Model.Figures[f];
            var given = !double.IsNaN(after[f]) && (figure.Property != BlendProperty.Viscosity || flow.Contains(figure.Temperature!.Value));
            differences.Add(new FigureDifference(
                figure.Name,
                figure.Printed(before[f]),
                given ? figure.Printed(after[f]) : null,
                figure.Unit,
                given ? Math.Round(Math.Abs(after[f] - before[f]) / figure.Step, 2) : null));
        }

        return differences;
    }
}
