namespace Materia.Formulation.Sections;

/// <summary>How much of the formula each result rests on, and which materials lack the data for it.</summary>
public sealed record CoverageReport
{
    /// <summary>The section <c>coverage</c>.</summary>
    public static EvaluationSection<CoverageReport> Section { get; } =
        new("coverage", "How much of the formula each result rests on, and which materials lack data for it.", Of);

    /// <summary>The results that rest on data of the materials.</summary>
    public required IReadOnlyList<SectionCoverage> Sections { get; init; }

    private static CoverageReport Of(EvaluationInput input) => new()
    {
        Sections = [.. DataNeed.All.Select(need => SectionCoverage.Of(need, input))],
    };
}

/// <summary>How much of the formula one result rests on.</summary>
public sealed record SectionCoverage
{
    /// <summary>The section.</summary>
    public required string Section { get; init; }

    /// <summary>The share of the mass concerned that has data, 0 to 1; absent when the section concerns none of the formula's materials.</summary>
    public double? Share { get; init; }

    /// <summary>What mass is concerned.</summary>
    public required string Concerns { get; init; }

    /// <summary>The materials concerned that lack data, by falling share.</summary>
    public required IReadOnlyList<MissingData> Missing { get; init; }

    internal static SectionCoverage Of(DataNeed need, EvaluationInput input)
    {
        var concerned = input.Blend.Components.Where(c => need.Concerns(c.Ingredient.Kind)).ToList();
        return new SectionCoverage
        {
            Section = need.Section.Name,
            Share = concerned.Count == 0 ? null : need.Coverage(input),
            Concerns = need.Concerned,
            Missing =
            [
                .. concerned
                    .Where(c => !need.IsMet(c.Ingredient, input.Release))
                    .OrderByDescending(c => c.MassFraction)
                    .Select(c => MissingData.Of(c, input.Release)),
            ],
        };
    }
}

/// <summary>A material that lacks data.</summary>
public sealed record MissingData : MaterialName
{
    /// <summary>Its share of the formula [%].</summary>
    public required double Percent { get; init; }

    internal static MissingData Of(Chemistry.BlendComponent component, Catalogue.Release release)
    {
        var own = release.FindIngredient(component.Name) is null;
        return new MissingData
        {
            Ingredient = own ? null : component.Name,
            Own = own ? component.Name : null,
            Percent = 100 * component.MassFraction,
        };
    }
}
