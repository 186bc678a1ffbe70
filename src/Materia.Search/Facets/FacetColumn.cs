namespace Materia.Search.Facets;

/// <summary>The values of one facet by the ingredients' ordinals, as numbers, so that counting is adding.</summary>
internal sealed class FacetColumn
{
    private readonly string[] values;
    private readonly int[][] numbers;

    /// <summary>Numbers the values of each ingredient.</summary>
    public FacetColumn(IReadOnlyList<IEnumerable<string>> valuesOfEach)
    {
        values = [.. valuesOfEach.SelectMany(v => v).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        numbers = [.. valuesOfEach.Select(own => own.Select(v => Array.BinarySearch(values, v, StringComparer.Ordinal)).ToArray())];
    }

    /// <summary>Counts the values of the ingredients with these ordinals.</summary>
    public IReadOnlyList<FacetCount> Count(IReadOnlyList<int> ingredients)
    {
        var counts = new int[values.Length];
        foreach (var ingredient in ingredients)
        {
            foreach (var number in numbers[ingredient])
            {
                counts[number]++;
            }
        }

        var found = new List<FacetCount>();
        for (var n = 0; n < counts.Length; n++)
        {
            if (counts[n] > 0)
            {
                found.Add(new FacetCount(values[n], counts[n]));
            }
        }

        // Equal counts keep the order of the values.
        found.Sort(static (a, b) => a.Count != b.Count ? b.Count.CompareTo(a.Count) : string.CompareOrdinal(a.Value, b.Value));
        return found;
    }
}
