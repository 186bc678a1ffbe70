using Materia.Catalogue.Regulated;
using Materia.Formulation;
using Materia.Formulation.Sections;

namespace Materia.Api.Figures;

/// <summary>Restricted substances against their limits.</summary>
internal static class LimitFigure
{
    public static FigureKind Kind { get; } = new(
        "limits", "Limits", RegulationSections.Limits,
        (evaluation, title) => ThresholdFigure.Draw(title, "Greatest share, as a multiple of the limit", "limit", Amounts(evaluation)),
        evaluation => "Greatest shares against their limits: " + ThresholdFigure.Describe(Amounts(evaluation)));

    private static List<BoundedAmount> Amounts(Evaluation evaluation) => ThresholdFigure.Highest(
        (evaluation.Of(RegulationSections.Limits) ?? []).Where(f => f is { Limit: > 0, Kind: not LimitKind.RawMaterial })
            .Select(f => new BoundedAmount(f.Substance, f.Amount.Low, f.Amount.High, f.Limit!.Value)));
}
