using Materia.Formulation;
using Materia.Formulation.Sections;
using ScottPlot;

namespace Materia.Api.Figures;

/// <summary>A figure that can be drawn of an evaluation.</summary>
/// <param name="Name">Its word in URLs.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Section">The section that it is drawn from.</param>
/// <param name="Draw">Draws it; <see langword="null"/> where the evaluation has nothing to draw.</param>
/// <param name="Describe">Tells in words what it shows.</param>
public sealed record FigureKind(string Name, string Title, EvaluationSection Section, Func<Evaluation, string, Plot?> Draw, Func<Evaluation, string> Describe);
