using Materia.Catalogue;

namespace Materia.Api.Reference;

/// <summary>A function and how many ingredients have it.</summary>
public sealed record FunctionCount
{
    /// <summary>The official term in kebab case.</summary>
    public required string Function { get; init; }

    /// <summary>How many ingredients have it.</summary>
    public required int Ingredients { get; init; }

    /// <summary>The path of the search that finds them.</summary>
    public required string Search { get; init; }

    /// <summary>The functions in use, in the order of their terms.</summary>
    public static IReadOnlyList<FunctionCount> All(Release release) =>
    [
        .. release.Content.Ingredients
            .SelectMany(i => i.Functions.Select(f => f.Function).Distinct(StringComparer.Ordinal))
            .CountBy(f => f)
            .OrderBy(f => f.Key, StringComparer.Ordinal)
            .Select(f => new FunctionCount { Function = f.Key, Ingredients = f.Value, Search = "/v1/ingredients?function=" + f.Key }),
    ];
}
