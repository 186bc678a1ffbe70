using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Formulation.Sections;

namespace Materia.Formulation;

/// <summary>What is asked of an evaluation.</summary>
public sealed record EvaluationOptions
{
    /// <summary>The sections to work out; all by default.</summary>
    public IReadOnlyList<EvaluationSection> Sections { get; init; } = EvaluationSections.All;

    /// <summary>Whether results carry their steps.</summary>
    public bool Explain { get; init; }

    /// <summary>The model that melting is worked out with.</summary>
    public MeltingModel MeltingModel { get; init; }

    /// <summary>The temperature of the equilibrium that the steps of melting show [Cel], a whole degree from −10 to 80.</summary>
    public int ExplainAt { get; init; } = Blend.UsualExplainAt;

    /// <summary>The day on which the product is placed on the market, which decides what rules are in force; the release's day where it is absent.</summary>
    public DateOnly? AsOf { get; init; }
}
