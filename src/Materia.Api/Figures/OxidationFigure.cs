using Materia.Formulation;
using Materia.Formulation.Sections;

namespace Materia.Api.Figures;

/// <summary>The ingredients that carry what can turn rancid.</summary>
internal static class OxidationFigure
{
    public static FigureKind Kind { get; } = new(
        "oxidation", "What can turn rancid", ChemistrySections.Oxidation,
        (evaluation, title) => BarFigure.Draw(title, "Share of the oxidisability (%)", Bars(evaluation)),
        evaluation => "Shares of the oxidisability: " + BarFigure.Describe(Bars(evaluation), "%"));

    private static List<RangedBar> Bars(Evaluation evaluation) =>
        [.. (evaluation.Of(ChemistrySections.Oxidation)?.Carriers ?? []).OrderByDescending(c => c.PercentOfTotal).Take(BarFigure.Most).Select(c => new RangedBar(c.Ingredient, c.PercentOfTotal, c.PercentOfTotal, c.PercentOfTotal))];
}
