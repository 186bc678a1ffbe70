using Materia.Api.Inventory;
using Materia.Catalogue;
using Materia.Search;

namespace Materia.Api.Ingredients;

/// <summary>One page of what a search found.</summary>
public sealed record SearchAnswer
{
    /// <summary>How many ingredients match, on all pages together.</summary>
    public required int Total { get; init; }

    /// <summary>The hits of this page.</summary>
    public required IReadOnlyList<IngredientHit> Items { get; init; }

    /// <summary>How the matches spread over kinds, functions, origins, charges and substitution groups, all pages together.</summary>
    public required SearchFacets Facets { get; init; }

    /// <summary>Names near to the text, the likeliest first, where no name matched as it was typed.</summary>
    public IReadOnlyList<SuggestedName> DidYouMean { get; init; } = [];

    /// <summary>
    /// Entries of the official inventory that the text names and that are not curated, below the hits; on the first page of a search
    /// for names alone, where an inventory was imported.
    /// </summary>
    public InventoryTier? Inventory { get; init; }

    /// <summary>The cursor of the next page, for the parameter <c>after</c>; absent on the last. The Link header has the whole address.</summary>
    public string? Next { get; init; }
}

/// <summary>An ingredient that was found.</summary>
public sealed record IngredientHit
{
    /// <summary>The id.</summary>
    public required string Id { get; init; }

    /// <summary>The common name.</summary>
    public required string Name { get; init; }

    /// <summary>The INCI name, where the catalogue has one.</summary>
    public string? InciName { get; init; }

    /// <summary>What kind of material it is.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>What it is and what it is like to work with, in a few sentences; its source stands in the record.</summary>
    public string? Description { get; init; }

    /// <summary>The figures that makers look at first, as computations take them; what is not known is absent.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>Why it was found: the names that the text matched, the figures and the shares that lie in the ranges. Absent where nothing was asked for.</summary>
    public Matched? Matched { get; init; }

    /// <summary>Puts the summary of an ingredient beside why it was found.</summary>
    public static IngredientHit Of(IngredientSummary summary, Matched matched) => new()
    {
        Id = summary.Id,
        Name = summary.Name,
        InciName = summary.InciName,
        Kind = summary.Kind,
        Description = summary.Description,
        Figures = summary.Figures,
        Matched = matched is { Names.Count: 0, Figures.Count: 0, Shares.Count: 0 } ? null : matched,
    };
}
