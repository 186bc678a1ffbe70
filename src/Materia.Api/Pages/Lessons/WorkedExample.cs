using Materia.Chemistry;
using Materia.Formulation;
using Materia.Formulation.Sections;

namespace Materia.Api.Pages.Lessons;

/// <summary>A formula on which a method shows what it does, the sections to work out, and which of their steps belong to the method.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Sections">The sections.</param>
/// <param name="Steps">Picks the steps.</param>
public sealed record WorkedExample(Formula Formula, IReadOnlyList<EvaluationSection> Sections, Func<Evaluation, IReadOnlyList<ExplainedStep>> Steps);
