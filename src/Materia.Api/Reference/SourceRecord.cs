using Materia.Catalogue;

namespace Materia.Api.Reference;

/// <summary>A source with what rests on it.</summary>
public sealed record SourceRecord
{
    /// <summary>The key that statements name, in kebab case.</summary>
    public required string Id { get; init; }

    /// <summary>What sort of place it is.</summary>
    public required SourceKind Kind { get; init; }

    /// <summary>Authors or the body that publishes it.</summary>
    public string? Authors { get; init; }

    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>The year of publication.</summary>
    public int? Year { get; init; }

    /// <summary>Where the work stands and which part was used.</summary>
    public string? Locator { get; init; }

    /// <summary>The licence of data taken over from it, where it has one.</summary>
    public string? Licence { get; init; }

    /// <summary>What a reader must know to judge it.</summary>
    public string? Note { get; init; }

    /// <summary>How many statements name it as the place where they were seen, of ingredients and of the reference tables.</summary>
    public required StatementCounts Statements { get; init; }

    /// <summary>The keys of the methods that rest on it.</summary>
    public IReadOnlyList<string> Methods { get; init; } = [];

    /// <summary>The ingredients with a statement that names it, by id; left out of the list of all sources.</summary>
    public IReadOnlyList<RestingIngredient> Ingredients { get; init; } = [];

    /// <summary>The record of <paramref name="source"/>.</summary>
    /// <param name="source">The source.</param>
    /// <param name="stated">The grade of each statement that names it, with the ingredient that it is about, if any.</param>
    /// <param name="methods">The methods that name it.</param>
    public static SourceRecord Of(Source source, IEnumerable<(Evidence Evidence, Ingredient? Ingredient)> stated, IEnumerable<string> methods)
    {
        var all = stated.ToList();
        return new()
        {
            Id = source.Id,
            Kind = source.Kind,
            Authors = source.Authors,
            Title = source.Title,
            Year = source.Year,
            Locator = source.Locator,
            Licence = source.Licence,
            Note = source.Note,
            Statements = StatementCounts.Of(all.Select(s => s.Evidence)),
            Methods = [.. methods.Order(StringComparer.Ordinal)],
            Ingredients =
            [
                .. all.Where(s => s.Ingredient is not null)
                    .GroupBy(s => s.Ingredient!.Id, StringComparer.Ordinal)
                    .OrderBy(g => g.Key, StringComparer.Ordinal)
                    .Select(g => RestingIngredient.Of(g.First().Ingredient!, g.Select(s => s.Evidence))),
            ],
        };
    }
}

/// <summary>An ingredient that rests on a source.</summary>
public sealed record RestingIngredient
{
    /// <summary>The ingredient's id.</summary>
    public required string Id { get; init; }

    /// <summary>Its common name.</summary>
    public required string Name { get; init; }

    /// <summary>How many of its statements name the source.</summary>
    public required StatementCounts Statements { get; init; }

    /// <summary>An ingredient with the grades of its statements that name the source.</summary>
    public static RestingIngredient Of(Ingredient ingredient, IEnumerable<Evidence> grades) =>
        new() { Id = ingredient.Id, Name = ingredient.CommonName(), Statements = StatementCounts.Of(grades) };
}

/// <summary>Statements by grade.</summary>
public sealed record StatementCounts
{
    /// <summary>All of them.</summary>
    public required int Total { get; init; }

    /// <summary>Read in the source itself.</summary>
    public required int Published { get; init; }

    /// <summary>Read in it as a citation of another work.</summary>
    public required int Secondary { get; init; }

    /// <summary>Trade knowledge.</summary>
    public required int CommonPractice { get; init; }

    /// <summary>Recalled.</summary>
    public required int Memory { get; init; }

    /// <summary>Counts grades.</summary>
    public static StatementCounts Of(IEnumerable<Evidence> grades)
    {
        var counts = grades.CountBy(g => g).ToDictionary();
        return new()
        {
            Total = counts.Values.Sum(),
            Published = counts.GetValueOrDefault(Evidence.Published),
            Secondary = counts.GetValueOrDefault(Evidence.Secondary),
            CommonPractice = counts.GetValueOrDefault(Evidence.CommonPractice),
            Memory = counts.GetValueOrDefault(Evidence.Memory),
        };
    }
}
