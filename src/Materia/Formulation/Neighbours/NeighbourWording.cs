using Materia.Catalogue;

namespace Materia.Formulation.Neighbours;

/// <summary>Writes out why an ingredient is a neighbour and how it differs.</summary>
internal static class NeighbourWording
{
    private const int MostFunctions = 4;

    /// <summary>What the two share, in sentences.</summary>
    public static IReadOnlyList<string> Why(NeighbourVector asked, NeighbourVector candidate, Release release)
    {
        var why = new List<string>();
        foreach (var key in asked.Groups.Where(candidate.Groups.Contains))
        {
            var text = candidate.Ingredient.SubstitutionGroups.First(g => g.Group == key).Text;
            why.Add($"{release.FindSubstitutionGroup(key)?.Name ?? key}: {text}");
        }

        if (asked.Ingredient.Kind == candidate.Ingredient.Kind)
        {
            why.Add($"Of the same kind: {KebabCase<IngredientKind>.Word(asked.Ingredient.Kind)}.");
        }

        var functions = asked.Functions.Where(candidate.Functions.Contains).ToList();
        if (functions.Count > 0)
        {
            why.Add($"Same functions in the inventory: {string.Join(", ", functions.Take(MostFunctions))}{(functions.Count > MostFunctions ? " and others" : string.Empty)}.");
        }

        return why;
    }

    /// <summary>How they differ in what both have a figure for, the greatest difference first, and what could not be compared.</summary>
    public static (IReadOnlyList<PropertyDifference> Differences, IReadOnlyList<string> NotCompared) Differences(NeighbourVector asked, NeighbourVector candidate, int[] columns)
    {
        var differences = new List<PropertyDifference>();
        var missing = new List<string>();
        foreach (var column in columns)
        {
            var axis = Axes.All[column];
            var (a, b) = (asked.Values[column], candidate.Values[column]);
            if (double.IsNaN(a) || double.IsNaN(b))
            {
                missing.Add(axis.Property);
                continue;
            }

            differences.Add(new()
            {
                Property = axis.Property,
                Temperature = axis.Temperature,
                Asked = a,
                Candidate = b,
                Unit = axis.Unit,
                Difference = b - a,
                Steps = axis.Steps(a, b),
            });
        }

        if (asked.Ingredient.Charge is { } charge)
        {
            if (candidate.Ingredient.Charge is { } other)
            {
                differences.Add(Charge(charge.Charge, other.Charge));
            }
            else
            {
                missing.Add("charge");
            }
        }

        if (asked.Ingredient.Kind == IngredientKind.EssentialOil)
        {
            if (asked.Constituents.Count > 0 && candidate.Constituents.Count > 0)
            {
                differences.Add(Constituents(asked, candidate));
            }
            else
            {
                missing.Add("constituents");
            }
        }

        return ([.. differences.OrderByDescending(d => d.Steps)], [.. missing.Distinct(StringComparer.Ordinal)]);
    }

    private static PropertyDifference Charge(IonicCharge asked, IonicCharge candidate) => new()
    {
        Property = "charge",
        Unit = Units.One,
        Steps = asked == candidate ? 0 : Comparison.StepsOfCharge,
        Words = asked == candidate
            ? $"both {KebabCase<IonicCharge>.Word(asked)}"
            : $"{KebabCase<IonicCharge>.Word(candidate)} in place of {KebabCase<IonicCharge>.Word(asked)}",
    };

    private static PropertyDifference Constituents(NeighbourVector asked, NeighbourVector candidate)
    {
        var percent = Comparison.ConstituentDifference(asked, candidate);
        var lost = asked.Constituents.Select(c => (c.Value.Name, By: Math.Abs(c.Value.Percent - candidate.Constituents.GetValueOrDefault(c.Key).Percent)))
            .Concat(candidate.Constituents.Where(c => !asked.Constituents.ContainsKey(c.Key)).Select(c => (c.Value.Name, By: c.Value.Percent)))
            .OrderByDescending(c => c.By)
            .ThenBy(c => c.Name, StringComparer.Ordinal)
            .Take(3)
            .Where(c => c.By > 0)
            .Select(c => c.Name)
            .ToList();
        return new()
        {
            Property = "constituents",
            Unit = Units.Percent,
            Difference = percent,
            Steps = Math.Min(Axis.MostSteps, percent / Comparison.StepOfConstituents),
            Words = lost.Count == 0 ? "the same constituents" : $"they differ most in {string.Join(", ", lost)}",
        };
    }
}
