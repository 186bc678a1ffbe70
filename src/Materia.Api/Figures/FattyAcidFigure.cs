using Materia.Formulation;
using Materia.Formulation.Sections;

namespace Materia.Api.Figures;

/// <summary>The largest fatty acids with their ranges.</summary>
internal static class FattyAcidFigure
{
    public static FigureKind Kind { get; } = new(
        "fatty-acids", "Fatty acids", ChemistrySections.FattyAcids,
        (evaluation, title) => BarFigure.Draw(title, "Share of all fatty acids (%)", Bars(evaluation)),
        evaluation => "The largest fatty acids: " + BarFigure.Describe(Bars(evaluation), "%"));

    private static List<RangedBar> Bars(Evaluation evaluation) =>
        [.. (evaluation.Of(ChemistrySections.FattyAcids)?.Acids ?? []).OrderByDescending(a => a.Percent).Take(BarFigure.Most).Select(a => new RangedBar($"{a.Name} {a.Acid}", a.Percent, a.Low, a.High))];
}
