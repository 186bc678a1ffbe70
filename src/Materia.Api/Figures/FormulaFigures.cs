using System.Collections.Frozen;
using Materia.Formulation;

namespace Materia.Api.Figures;

/// <summary>The figures of formulas, and of ingredients, which are drawn as formulas of one line.</summary>
public static class FormulaFigures
{
    private const int LongestTitle = 60;

    /// <summary>All of them, in the order in which documents show them.</summary>
    public static IReadOnlyList<FigureKind> All { get; } =
        [MeltingFigure.Kind, FlowFigure.Kind, FattyAcidFigure.Kind, OxidationFigure.Kind, AllergenFigure.Kind, LimitFigure.Kind, CostFigure.Kind];

    /// <summary>Those that say something of a single ingredient.</summary>
    public static IReadOnlyList<FigureKind> OfIngredient { get; } = [MeltingFigure.Kind, FlowFigure.Kind, FattyAcidFigure.Kind];

    private static readonly FrozenDictionary<string, FigureKind> ByName = All.ToFrozenDictionary(f => f.Name, StringComparer.Ordinal);

    /// <summary>The figure of this name, or <see langword="null"/>.</summary>
    public static FigureKind? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>The figure as an SVG document; <see langword="null"/> where the evaluation has nothing to draw.</summary>
    public static string? Svg(FigureKind figure, Evaluation evaluation)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var title = Title(figure, evaluation);
        using var plot = figure.Draw(evaluation, title);
        return plot is null ? null : FigureCanvas.ToSvg(plot, figure.Name, title, FigureCanvas.Safe(figure.Describe(evaluation), int.MaxValue));
    }

    /// <summary>The figure as a PNG; <see langword="null"/> where the evaluation has nothing to draw.</summary>
    public static byte[]? Png(FigureKind figure, Evaluation evaluation)
    {
        ArgumentNullException.ThrowIfNull(figure);
        using var plot = figure.Draw(evaluation, Title(figure, evaluation));
        return plot is null ? null : FigureCanvas.ToPng(plot);
    }

    private static string Title(FigureKind figure, Evaluation evaluation) => string.IsNullOrWhiteSpace(evaluation.Title)
        ? figure.Title
        : $"{figure.Title}: {FigureCanvas.Safe(evaluation.Title, LongestTitle)}";
}
