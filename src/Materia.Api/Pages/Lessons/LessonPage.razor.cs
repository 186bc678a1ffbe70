using Materia.Api.Pages.Failures;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Formulation;
using Microsoft.AspNetCore.Components;

namespace Materia.Api.Pages.Lessons;

/// <summary>One method: what it is for in a few sentences, an example worked on the spot, and where it holds.</summary>
public partial class LessonPage
{
    /// <summary>The method's key.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    /// <summary>The request.</summary>
    [CascadingParameter]
    public HttpContext Context { get; set; } = null!;

    /// <summary>The release.</summary>
    [Inject]
    public required ServedRelease Served { get; set; }

    private Method? Method { get; set; }

    private Formula? Example { get; set; }

    private Evaluation? Evaluation { get; set; }

    private IReadOnlyList<ExplainedStep> Steps { get; set; } = [];

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Method = AllMethods.ById.GetValueOrDefault(Id);
        if (Method is null)
        {
            FailurePages.NotFound(Context, []);
            return;
        }

        if (WorkedExamples.Of(Id) is { } worked && NormalisedFormula.Create(worked.Formula, Served.Release).Formula is { } formula)
        {
            Example = worked.Formula;
            Evaluation = Evaluator.Evaluate(formula, Served.Release, new EvaluationOptions { Explain = true, Sections = worked.Sections });
            Steps = worked.Steps(Evaluation);
        }
    }
}
