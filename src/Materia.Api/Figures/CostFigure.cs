using Materia.Formulation;
using Materia.Formulation.Costs;

namespace Materia.Api.Figures;

/// <summary>Which materials the money goes into.</summary>
internal static class CostFigure
{
    public static FigureKind Kind { get; } = new(
        "cost", "Cost of materials", ProductCost.Section,
        (evaluation, title) => BarFigure.Draw(title, "Share of the cost of materials (%)", Bars(evaluation)),
        evaluation => "Shares of the cost of materials: " + BarFigure.Describe(Bars(evaluation), "%"));

    private static List<RangedBar> Bars(Evaluation evaluation) =>
        [.. (evaluation.Of(ProductCost.Section)?.Lines ?? []).Where(l => l.SharePercent is not null).OrderByDescending(l => l.SharePercent).Take(BarFigure.Most)
            .Select(l => new RangedBar(l.Ingredient ?? l.Own ?? "", (double)l.SharePercent!, (double)l.SharePercent!, (double)l.SharePercent!))];
}
