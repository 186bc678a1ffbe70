using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>What the catalogue holds, how well it is sourced, what it lacks and where its sources disagree.</summary>
public sealed record CatalogueReport
{
    /// <summary>Ingredients.</summary>
    public required int Ingredients { get; init; }

    /// <summary>The kinds whose figures are counted in <see cref="LipidFigures"/>.</summary>
    public required IReadOnlyList<IngredientKind> LipidKinds { get; init; }

    /// <summary>Grades of the figures of lipids: properties and shares of fatty acids, triacylglycerols and constituents; usage levels apart.</summary>
    public required GradeCounts LipidFigures { get; init; }

    /// <summary>Grades of the figures of all ingredients.</summary>
    public required GradeCounts Figures { get; init; }

    /// <summary>Grades of the usage levels.</summary>
    public required GradeCounts UsageLevels { get; init; }

    /// <summary>Grades of all statements about ingredients: names, numbers and texts as well.</summary>
    public required GradeCounts Statements { get; init; }

    /// <summary>The kinds that have ingredients.</summary>
    public required IReadOnlyList<KindReport> Kinds { get; init; }

    /// <summary>What is stated of a kind's ingredients, and what is expected of them, by kind.</summary>
    public required IReadOnlyList<MeasureReport> Measures { get; init; }

    /// <summary>Figures on which sources disagree.</summary>
    public required IReadOnlyList<Conflict> Conflicts { get; init; }

    /// <summary>What would raise the catalogue most, the first first.</summary>
    public required IReadOnlyList<Gain> Gains { get; init; }

    /// <summary>Reports on <paramref name="content"/>.</summary>
    public static CatalogueReport Of(CatalogueContent content)
    {
        var kinds = content.Ingredients.GroupBy(i => i.Kind).OrderBy(g => g.Key).ToList();
        var measures = kinds.SelectMany(MeasureReports.Of).ToList();
        return new CatalogueReport
        {
            Ingredients = content.Ingredients.Count,
            LipidKinds = ExpectedMeasures.LipidKinds,
            LipidFigures = GradeCounts.Of(content.Ingredients.Where(i => ExpectedMeasures.LipidKinds.Contains(i.Kind)).SelectMany(FiguresOf)),
            Figures = GradeCounts.Of(content.Ingredients.SelectMany(FiguresOf)),
            UsageLevels = GradeCounts.Of(content.Ingredients.SelectMany(Measure.Usage.Statements)),
            Statements = GradeCounts.Of(content.Ingredients.SelectMany(i => i.Statements())),
            Kinds =
            [
                .. kinds.Select(g => new KindReport
                {
                    Kind = g.Key,
                    Ingredients = g.Count(),
                    Figures = GradeCounts.Of(g.SelectMany(FiguresOf)),
                }),
            ],
            Measures = measures,
            Conflicts = [.. content.Ingredients.SelectMany(Conflict.Of)],
            Gains = Gain.Of(content.Ingredients),
        };
    }

    private static IEnumerable<Statement> FiguresOf(Ingredient ingredient) => Measure.Figures(ingredient).Select(f => f.Figure);
}

/// <summary>One kind.</summary>
public sealed record KindReport
{
    /// <summary>The kind.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>Its ingredients.</summary>
    public required int Ingredients { get; init; }

    /// <summary>Grades of their figures.</summary>
    public required GradeCounts Figures { get; init; }
}

/// <summary>One measure of one kind.</summary>
public sealed record MeasureReport
{
    /// <summary>The kind.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>The property, composition or member.</summary>
    public required string Measure { get; init; }

    /// <summary>How many of the kind have it.</summary>
    public required int Present { get; init; }

    /// <summary>How many of the kind lack it; absent where it is not expected of the kind.</summary>
    public required int? Missing { get; init; }

    /// <summary>Grades of its statements.</summary>
    public required GradeCounts Grades { get; init; }
}
