using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>A gap that work could close: ingredients of a kind that lack a measure, or that have it from memory only.</summary>
public sealed record Gain
{
    /// <summary>How the gains are ranked, for readers of the report.</summary>
    public const string Rule =
        "Ranked by class: 1 fatty-acid profiles, and melting of lipids; 2 constituents of essential oils; 3 HLB and required HLB; " +
        "4 what else computations, limits and searches rest on; 5 the rest of the record. Within a class by the number of ingredients that lack it or have it from memory only.";

    /// <summary>The class of the rule, 1 to 5.</summary>
    public required int Class { get; init; }

    /// <summary>The kind.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>What is lacking.</summary>
    public required string Measure { get; init; }

    /// <summary>The ingredients without any statement of it, by id.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>The ingredients whose statements of it are all recalled, by id.</summary>
    public required IReadOnlyList<string> Recalled { get; init; }

    /// <summary>The gains over <paramref name="ingredients"/>, ranked.</summary>
    internal static IReadOnlyList<Gain> Of(IReadOnlyList<Ingredient> ingredients) =>
    [
        .. ingredients.GroupBy(i => i.Kind)
            .SelectMany(kind => ExpectedMeasures.Of(kind.Key).Select(measure => Of(kind, measure)))
            .Where(g => g.Missing.Count + g.Recalled.Count > 0)
            .OrderBy(g => g.Class)
            .ThenByDescending(g => g.Missing.Count + g.Recalled.Count)
            .ThenBy(g => g.Kind)
            .ThenBy(g => g.Measure, StringComparer.Ordinal),
    ];

    private static Gain Of(IGrouping<IngredientKind, Ingredient> kind, Measure measure)
    {
        var statements = kind.OrderBy(i => i.Id, StringComparer.Ordinal).Select(i => (i.Id, Grades: GradeCounts.Of(measure.Statements(i)))).ToList();
        return new Gain
        {
            Class = ExpectedMeasures.Class(kind.Key, measure),
            Kind = kind.Key,
            Measure = measure.Name,
            Missing = [.. statements.Where(s => s.Grades.Total == 0).Select(s => s.Id)],
            Recalled = [.. statements.Where(s => s.Grades.Total > 0 && s.Grades.Memory == s.Grades.Total).Select(s => s.Id)],
        };
    }
}
