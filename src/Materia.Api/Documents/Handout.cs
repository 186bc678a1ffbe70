using Materia.Api.Figures;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Formulation;
using Materia.Formulation.Sections;

namespace Materia.Api.Documents;

/// <summary>A handout for teaching: what the formula is, what it will do, how each figure was worked out, and where it comes from.</summary>
internal static class Handout
{
    /// <summary>The word that asks for it.</summary>
    public const string Kind = "handout";

    private const int MostInputs = 12;
    private const int MostSteps = 6;

    /// <summary>Writes the handout of an evaluation that was made with its steps.</summary>
    public static Paper Of(Evaluation evaluation, Release release)
    {
        var chapters = HandoutChapters.Of(evaluation).ToList();
        var blocks = new List<PaperBlock>
        {
            new Paragraph("What this blend is, what it will do, how each figure was worked out, and where the figures that went in come from. A range after a figure says how far it may be off."),
            new Heading(2, "The formula"),
            Lines(evaluation),
        };
        var cited = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var chapter in chapters)
        {
            blocks.Add(new Heading(2, chapter.Title));
            blocks.AddRange(chapter.Blocks);
            if (chapter.Figure is { } figure && FormulaFigures.Svg(figure, evaluation) is { } svg)
            {
                blocks.Add(new Drawing(svg, FigureCanvas.Safe(figure.Describe(evaluation), int.MaxValue)));
            }

            blocks.AddRange(Working(chapter, cited));
        }

        blocks.AddRange(Unknown(evaluation));
        blocks.AddRange(Sources(cited, release));
        blocks.Add(new Paragraph(Evaluation.Caution, IsNote: true));
        return new Paper(evaluation.Title is { Length: > 0 } title ? title : "A formula explained", Kind, blocks);
    }

    private static Table Lines(Evaluation evaluation) => new(
        "By mass.",
        [new("Ingredient"), new("INCI name"), new("Kind"), new("%", IsNumber: true)],
        [.. evaluation.Of(FormulaSummary.Section)!.Lines.Select(l => (IReadOnlyList<string>)[l.Label ?? l.Name, l.InciName ?? "", KebabCase<IngredientKind>.Word(l.Kind).Replace('-', ' '), Shown.Number(l.Percent)])]);

    private static IEnumerable<PaperBlock> Working(HandoutChapter chapter, SortedSet<string> cited)
    {
        if (chapter.Method is null || !AllMethods.ById.TryGetValue(chapter.Method, out var method))
        {
            yield break;
        }

        cited.UnionWith(method.Sources);
        yield return new Heading(3, "How it is worked out");
        yield return new Paragraph($"{method.Name}. {method.Equation}");
        yield return new Paragraph($"Where it holds: {method.Validity}");
        yield return new Paragraph($"How far it may be off: {method.Error}");
        foreach (var step in chapter.Steps.Take(MostSteps))
        {
            yield return new Paragraph($"{step.What}: {step.Equation}. {step.Arithmetic}");
            if (step.Inputs.Count == 0)
            {
                continue;
            }

            cited.UnionWith(step.Inputs.Select(i => i.Source));
            yield return new Table(
                step.Inputs.Count > MostInputs ? $"The first {MostInputs} of {step.Inputs.Count} figures that went in; explain=true gives all." : "The figures that went in.",
                [new("Ingredient"), new("Figure"), new("Value", IsNumber: true), new("How it was seen"), new("Source")],
                [.. step.Inputs.Take(MostInputs).Select(i => (IReadOnlyList<string>)[i.Ingredient, i.What, $"{Shown.Number(i.Value)} {Shown.Unit(i.Unit)}".TrimEnd(), i.Evidence, i.Locator is null ? i.Source : $"{i.Source}, {i.Locator}"])]);
        }
    }

    private static IEnumerable<PaperBlock> Unknown(Evaluation evaluation)
    {
        var gaps = (evaluation.Of(CoverageReport.Section)?.Sections ?? []).Where(s => s.Missing.Count > 0).ToList();
        if (gaps.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "What is not known");
        yield return new Bullets([.. gaps.Select(g => $"{g.Section}: {string.Join(", ", g.Missing.Select(m => $"{m.Ingredient ?? m.Own} ({Shown.Number(m.Percent)} %)"))}")]);
    }

    private static IEnumerable<PaperBlock> Sources(SortedSet<string> cited, Release release)
    {
        var works = cited.Select(release.FindSource).OfType<Source>().ToList();
        if (works.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Sources");
        yield return new Bullets([.. works.Select(s => $"{s.Id}: {string.Join(". ", new[] { s.Authors, s.Title, s.Year?.ToString(System.Globalization.CultureInfo.InvariantCulture), s.Locator }.OfType<string>())}.")]);
    }
}

/// <summary>A chapter of a handout: one result with what explains it.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">The result in words and tables.</param>
/// <param name="Figure">The figure that belongs to it.</param>
/// <param name="Method">The key of the method.</param>
/// <param name="Steps">How it came about.</param>
internal sealed record HandoutChapter(string Title, IReadOnlyList<PaperBlock> Blocks, FigureKind? Figure, string? Method, IReadOnlyList<ExplainedStep> Steps);
