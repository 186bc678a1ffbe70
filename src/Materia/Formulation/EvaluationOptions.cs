using Materia.Formulation.Sections;

namespace Materia.Formulation;

/// <summary>What is asked of an evaluation.</summary>
public sealed record EvaluationOptions
{
    /// <summary>The sections to work out; all by default.</summary>
    public IReadOnlyList<EvaluationSection> Sections { get; init; } = EvaluationSections.All;

    /// <summary>Whether results carry their steps.</summary>
    public bool Explain { get; init; }
}
