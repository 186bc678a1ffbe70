using Materia.Formulation;
using Materia.Formulation.Sections;

namespace Materia.Api.Figures;

/// <summary>The fragrance allergens against the shares from which the label must name them.</summary>
internal static class AllergenFigure
{
    public static FigureKind Kind { get; } = new(
        "allergens", "Fragrance allergens", RegulationSections.Allergens,
        (evaluation, title) => ThresholdFigure.Draw(title, "Greatest share, as a multiple of the threshold", "named above this", Amounts(evaluation)),
        evaluation => "Greatest shares against the threshold of the label: " + ThresholdFigure.Describe(Amounts(evaluation)));

    private static List<BoundedAmount> Amounts(Evaluation evaluation) => ThresholdFigure.Highest(
        (evaluation.Of(RegulationSections.Allergens) ?? []).Select(a => new BoundedAmount(a.DeclarationName, a.Amount.Low, a.Amount.High, a.Threshold)));
}
