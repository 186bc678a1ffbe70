using Materia.Catalogue;

namespace Materia.Formulation.Sections;

/// <summary>The formula as it was understood: every amount as a percentage, every material by its names.</summary>
public sealed record FormulaSummary
{
    /// <summary>The section <c>formula</c>.</summary>
    public static EvaluationSection<FormulaSummary> Section { get; } =
        new("formula", "The formula as it was understood, in percent by mass, with the names of each material.", Of);

    /// <summary>The lines, in the order given.</summary>
    public required IReadOnlyList<SummaryLine> Lines { get; init; }

    /// <summary>The sum of the percentages, always 100 [%].</summary>
    public required decimal TotalPercent { get; init; }

    /// <summary>The gain in volume by whipping [%].</summary>
    public decimal? OverrunPercent { get; init; }

    /// <summary>What was taken otherwise than it was written.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    private static FormulaSummary Of(EvaluationInput input) => new()
    {
        Lines = [.. input.Formula.Lines.Select(SummaryLine.Of)],
        TotalPercent = input.Formula.Lines.Sum(l => l.Percent),
        OverrunPercent = input.Formula.OverrunPercent,
        Notes = input.Formula.Notes,
    };
}

/// <summary>One line as it was understood.</summary>
public sealed record SummaryLine : MaterialName
{
    /// <summary>The common name in English.</summary>
    public required string Name { get; init; }

    /// <summary>The INCI name, where one is known.</summary>
    public string? InciName { get; init; }

    /// <summary>What the maker calls the line, where that was given.</summary>
    public string? Label { get; init; }

    /// <summary>What kind of material it is.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>The phase, where one was given.</summary>
    public Phase? Phase { get; init; }

    /// <summary>The share by mass [%].</summary>
    public required decimal Percent { get; init; }

    /// <summary>The share by mass, 0 to 1.</summary>
    public required decimal MassFraction { get; init; }

    /// <summary>The parts of a ready-made mixture, in percent of the formula; absent for a single material.</summary>
    public IReadOnlyList<SummaryPart>? Parts { get; init; }

    internal static SummaryLine Of(NormalisedLine line) => new()
    {
        Ingredient = line.IsOwn ? null : line.Material,
        Own = line.IsOwn ? line.Material : null,
        Name = line.Ingredient.CommonName(),
        InciName = line.Ingredient.InciName(),
        Label = line.Name,
        Kind = line.Ingredient.Kind,
        Phase = line.Phase,
        Percent = line.Percent,
        MassFraction = line.Percent / 100,
        Parts = line.IsMixture ? [.. line.Parts.Select(p => new SummaryPart(p.Ingredient.CommonName(), decimal.Round(p.Share * line.Percent, 6)))] : null,
    };
}

/// <summary>A part of a ready-made mixture.</summary>
/// <param name="Name">Its common name.</param>
/// <param name="Percent">Its share of the formula [%].</param>
public sealed record SummaryPart(string Name, decimal Percent);
