namespace Materia.Search;

/// <summary>How many matches have each value, the most frequent value first, equal counts by value.</summary>
/// <param name="Kind">Kinds in kebab case.</param>
/// <param name="Function">Functions; an ingredient counts under each that it has.</param>
/// <param name="Origin">Kingdoms of origin; ingredients without one are not counted.</param>
/// <param name="Charge">Charges in water; ingredients without one are not counted.</param>
/// <param name="Group">Substitution groups; an ingredient counts under each that it is a member of.</param>
public sealed record SearchFacets(
    IReadOnlyList<FacetCount> Kind,
    IReadOnlyList<FacetCount> Function,
    IReadOnlyList<FacetCount> Origin,
    IReadOnlyList<FacetCount> Charge,
    IReadOnlyList<FacetCount> Group)
{
    /// <summary>The facets of no matches.</summary>
    public static SearchFacets None { get; } = new([], [], [], [], []);
}

/// <summary>How many matches have a value.</summary>
/// <param name="Value">The value.</param>
/// <param name="Count">The number of matches, at least 1.</param>
public sealed record FacetCount(string Value, int Count);
