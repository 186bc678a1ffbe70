using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>Which of several statements of one property a computation takes.</summary>
internal static class StoredFigures
{
    /// <summary>The word that marks figures which came with a formula.</summary>
    public const string Own = "own";

    /// <summary>
    /// The statement to compute with: a maker's own first, then a marked one, then the better grade, then the earlier; statements that
    /// hold no number do not count. <see langword="null"/> when there is none.
    /// </summary>
    public static Figure? Find(Ingredient ingredient, Property property)
    {
        Figure? chosen = null;
        foreach (var figure in ingredient.Properties)
        {
            if (figure.Property == property && HasNumber(figure) && (chosen is null || Rank(figure) < Rank(chosen)))
            {
                chosen = figure;
            }
        }

        return chosen;
    }

    /// <summary>True when the statement holds a number at all.</summary>
    public static bool HasNumber(Figure figure) => (figure.Low ?? figure.Typical ?? figure.High) is not null;

    /// <summary>How a statement ranks; the smaller is the better.</summary>
    public static int Rank(Figure figure) =>
        figure.Source == Own ? -1 : (figure.Used ? 0 : 10) + (int)figure.Evidence;

    /// <summary>The statement as the steps of an explanation name it.</summary>
    public static UsedFigure Cite(string name, Figure figure) =>
        Cite(name, figure, What(figure), (double)figure.Central(), figure.Unit);

    /// <summary>One share of a profile as the steps of an explanation name it.</summary>
    public static UsedFigure Cite(string name, FattyAcidShare share) =>
        Cite(name, share, share.Acid, (double)(share.Typical ?? (((share.Low ?? 0) + (share.High ?? 0)) / 2)), Units.Percent);

    /// <summary>One share of a table of triacylglycerols as the steps of an explanation name it.</summary>
    public static UsedFigure Cite(string name, TriacylglycerolShare share) =>
        Cite(name, share, share.Species, (double)(share.Typical ?? (((share.Low ?? 0) + (share.High ?? 0)) / 2)), Units.Percent);

    private static UsedFigure Cite(string name, Statement statement, string what, double value, string unit) =>
        new(name, what, value, unit, KebabCase<Evidence>.Word(statement.Evidence), statement.Source, statement.Locator);

    private static string What(Figure figure)
    {
        var title = PropertyDefinition.All[figure.Property].Title.ToLowerInvariant();
        return figure.At?.Temperature is { } temperature ? $"{title} at {Written.Number((double)temperature)} Cel" : title;
    }
}
