using System.Globalization;
using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>
/// Figures of one property under the same conditions, or of one constituent, that two sources give and that have no value in common.
/// Profiles of different samples differ by nature and are not compared.
/// </summary>
public sealed record Conflict
{
    /// <summary>The ingredient.</summary>
    public required string Ingredient { get; init; }

    /// <summary>The property with its temperature, or the constituent.</summary>
    public required string Subject { get; init; }

    /// <summary>What each source says.</summary>
    public required IReadOnlyList<ConflictingFigure> Figures { get; init; }

    /// <summary>The conflicts of one ingredient.</summary>
    internal static IEnumerable<Conflict> Of(Ingredient ingredient)
    {
        var properties = ingredient.Properties
            .GroupBy(f => (f.Property, f.At))
            .Select(g => (Subject(g.Key.Property, g.Key.At), g.Select(ConflictingFigure.Of).ToList()));
        var constituents = ingredient.Constituents
            .Where(c => (c.Low ?? c.Typical ?? c.High) is not null)
            .GroupBy(c => c.Substance, StringComparer.OrdinalIgnoreCase)
            .Select(g => (g.Key, g.Select(ConflictingFigure.Of).ToList()));
        return properties.Concat(constituents)
            .Where(g => Disagree(g.Item2))
            .Select(g => new Conflict { Ingredient = ingredient.Id, Subject = g.Item1, Figures = g.Item2 });

        static string Subject(Property property, Conditions? at) => at?.Temperature is { } temperature
            ? string.Create(CultureInfo.InvariantCulture, $"{KebabCase<Property>.Word(property)} at {temperature} Cel")
            : KebabCase<Property>.Word(property);
    }

    // A group holds a handful of figures at most.
    private static bool Disagree(List<ConflictingFigure> figures) =>
        figures.Exists(a => figures.Exists(b => a.Source != b.Source && a.High < b.Low));
}

/// <summary>A figure that another does not agree with.</summary>
public sealed record ConflictingFigure
{
    /// <summary>The least value it allows for; absent where only the upper end is stated.</summary>
    public required decimal? Low { get; init; }

    /// <summary>The greatest value it allows for; absent where only the lower end is stated.</summary>
    public required decimal? High { get; init; }

    /// <summary>The key of its source.</summary>
    public required string Source { get; init; }

    /// <summary>Its grade.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>True for the one that computations use.</summary>
    public required bool Used { get; init; }

    /// <summary>A figure of a property.</summary>
    internal static ConflictingFigure Of(Figure figure) => Of(figure, figure.Low, figure.Typical, figure.High, figure.Used);

    /// <summary>A share of a constituent.</summary>
    internal static ConflictingFigure Of(Constituent constituent) =>
        Of(constituent, constituent.Low, constituent.Typical, constituent.High, constituent.Used);

    private static ConflictingFigure Of(Statement statement, decimal? low, decimal? typical, decimal? high, bool used) => new()
    {
        Low = low ?? (high is null ? typical : null),
        High = high ?? (low is null ? typical : null),
        Source = statement.Source,
        Evidence = statement.Evidence,
        Used = used,
    };
}
