using Materia.Regulation.Allergens;
using Materia.Regulation.Limits;

namespace Materia.Formulation.Sections;

/// <summary>The sections that rules alone decide.</summary>
public static class RegulationSections
{
    /// <summary>The limits.</summary>
    public static EvaluationSection<IReadOnlyList<LimitFinding>> Limits { get; } =
        new("limits", "How the formula stands to each limit of law, trade standard and opinion that names something in it, with the largest share of each material that would pass.", i => LimitFindings.Of(i.Regulated));

    /// <summary>The fragrance allergens.</summary>
    public static EvaluationSection<IReadOnlyList<AllergenFinding>> Allergens { get; } =
        new("allergens", "The fragrance allergens in the formula, which of them the label must name, and how far below the threshold the others are.", i => AllergenFindings.Of(i.Regulated));

    /// <summary>What cannot be told of the materials.</summary>
    public static EvaluationSection<CompositionGaps> Gaps { get; } =
        new("compositionGaps", "The materials whose composition is not wholly known, and how many allergens could be in them unsaid.", i => CompositionGaps.Of(i.Regulated));
}
