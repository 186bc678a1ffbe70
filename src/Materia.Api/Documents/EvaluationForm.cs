using Materia.Api.Figures;
using Materia.Api.Http;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Batches;
using Materia.Formulation.Making;
using Materia.Formulation.Sections;

namespace Materia.Api.Documents;

/// <summary>The forms in which an evaluation is given besides JSON, and what each needs worked out.</summary>
internal static class EvaluationForm
{
    /// <summary>The query parameter that chooses the document.</summary>
    public static readonly QueryParameter Document = new("document", "For text/html and text/markdown: batch-sheet, the sheet beside the stove with boxes to tick and blanks to fill in, or handout, the figures explained with their sources.")
    {
        Words = [BatchSheet.Kind, Handout.Kind],
        Example = BatchSheet.Kind,
    };

    /// <summary>The query parameter that chooses the figure.</summary>
    public static readonly QueryParameter Figure = new("figure", "For image/svg+xml and image/png: which figure.")
    {
        Words = [.. FormulaFigures.All.Select(f => f.Name)],
        Example = MeltingFigure.Kind.Name,
    };

    private const string Svg = "image/svg+xml";
    private const string Png = "image/png";
    private const string Html = "text/html";
    private const string Markdown = "text/markdown";
    private const string Csv = "text/csv";

    private static readonly EvaluationSection[] SheetSections =
        [FormulaSummary.Section, ProcessPlan.Section, BatchPlan.Section, ProductSections.Declaration, ProductSections.Cautions];

    private static readonly EvaluationSection[] HandoutSections =
    [
        FormulaSummary.Section, ChemistrySections.Melting, ChemistrySections.Flow, ChemistrySections.FattyAcids, ChemistrySections.IodineValue, ChemistrySections.SaponificationValue,
        ChemistrySections.Oxidation, RegulationSections.Allergens, RegulationSections.Limits, CoverageReport.Section,
    ];

    /// <summary>The media types, the usual one first.</summary>
    public static IReadOnlyList<string> Types { get; } = ["application/json", Html, Markdown, Csv, Svg, Png];

    /// <summary>What to work out for a form; <see langword="null"/> for JSON, which gives what was asked for.</summary>
    /// <param name="type">The media type chosen.</param>
    /// <param name="query">The query, whose wrong words become faults.</param>
    /// <param name="options">What was asked of the evaluation.</param>
    public static (EvaluationOptions Options, Func<Evaluation, Release, IResult> Write)? Read(string type, QueryReader query, EvaluationOptions options)
    {
        var document = query.OneOf(Document.Name, Document.Words) ?? BatchSheet.Kind;
        var figure = FormulaFigures.Find(query.OneOf(Figure.Name, Figure.Words) ?? MeltingFigure.Kind.Name) ?? MeltingFigure.Kind;
        return type switch
        {
            Html or Markdown => (options with { Sections = document == Handout.Kind ? HandoutSections : SheetSections, Explain = document == Handout.Kind },
                (evaluation, release) => Written(document == Handout.Kind ? Handout.Of(evaluation, release) : BatchSheet.Of(evaluation, release), type, evaluation)),
            Csv => (options with { Sections = LinesCsv.Sections, Explain = false }, (evaluation, _) => new DocumentResult(LinesCsv.Write(evaluation), Csv, PaperText.Slug(evaluation.Title) + ".csv")),
            Svg or Png => (options with { Sections = [figure.Section], Explain = false }, (evaluation, _) => Drawn(figure, type, evaluation)),
            _ => null,
        };
    }

    private static DocumentResult Written(Paper paper, string type, Evaluation evaluation) => type == Html
        ? new(HtmlPaper.Write(paper), Html, $"{PaperText.Slug(evaluation.Title)}-{paper.Kind}.html")
        : new(MarkdownPaper.Write(paper), Markdown, $"{PaperText.Slug(evaluation.Title)}-{paper.Kind}.md");

    private static IResult Drawn(FigureKind figure, string type, Evaluation evaluation)
    {
        var bytes = type == Png ? FormulaFigures.Png(figure, evaluation)
            : FormulaFigures.Svg(figure, evaluation) is { } svg ? System.Text.Encoding.UTF8.GetBytes(svg) : null;
        return bytes is null
            ? Problems.Unprocessable("?figure", $"There is nothing to draw: the section {figure.Section.Name} of this formula has no such figures; its answer in JSON says why.")
            : new DocumentResult(bytes, type, $"{PaperText.Slug(evaluation.Title)}-{figure.Name}.{(type == Png ? "png" : "svg")}");
    }
}
