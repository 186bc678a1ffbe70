namespace Materia.Search;

/// <summary>What a search found. When <see cref="Faults"/> isn't empty, nothing was searched and everything else is empty.</summary>
public sealed record SearchPage
{
    /// <summary>What is wrong with the request.</summary>
    public IReadOnlyList<SearchFault> Faults { get; init; } = [];

    /// <summary>How many ingredients match, on all pages together.</summary>
    public int Total { get; init; }

    /// <summary>The hits of this page, in the order asked for.</summary>
    public IReadOnlyList<SearchHit> Hits { get; init; } = [];

    /// <summary>How the matches spread over kinds, functions and origins, all pages together.</summary>
    public SearchFacets Facets { get; init; } = SearchFacets.None;

    /// <summary>
    /// Names near to the text, the likeliest first, where no name matched as it was typed; the hits are then those that match when
    /// typing errors are forgiven. Filters play no part in it.
    /// </summary>
    public IReadOnlyList<Suggestion> DidYouMean { get; init; } = [];

    /// <summary>The cursor of the next page; <see langword="null"/> on the last. It holds within one release, for the same request with any limit.</summary>
    public string? Next { get; init; }
}

/// <summary>Something wrong with a request.</summary>
/// <param name="Member">The member at fault: <c>text</c>, <c>limit</c>, <c>sort</c>, <c>after</c>, <c>acid</c> or the name of a property group.</param>
/// <param name="Message">What is wrong and what to do, in a sentence.</param>
public sealed record SearchFault(string Member, string Message);

/// <summary>An ingredient that was found.</summary>
/// <param name="IngredientId">Its id.</param>
/// <param name="Matched">Why it was found.</param>
public sealed record SearchHit(string IngredientId, Matched Matched);

/// <summary>Why an ingredient was found; each list is empty where the request doesn't ask for such a thing.</summary>
public sealed record Matched
{
    /// <summary>The names that the text matched, the best first: at most three that match alone, or those that match together.</summary>
    public IReadOnlyList<MatchedName> Names { get; init; } = [];

    /// <summary>The figures that satisfied the ranges.</summary>
    public IReadOnlyList<MatchedFigure> Figures { get; init; } = [];

    /// <summary>The shares of fatty acids that satisfied the ranges.</summary>
    public IReadOnlyList<MatchedShare> Shares { get; init; } = [];
}
