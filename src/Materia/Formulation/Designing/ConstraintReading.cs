using Materia.Catalogue;
using Materia.Formulation.Normalising;
using Materia.Formulation.Optimising;

namespace Materia.Formulation.Designing;

/// <summary>Turns constraints into bounds, and names those that contradict each other.</summary>
internal static class ConstraintReading
{
    private const int Most = 200;

    /// <summary>The region, its bounds brought inward to tenths; of use only when no fault was added.</summary>
    public static Region? Read(IReadOnlyList<DesignConstraint> constraints, IReadOnlyList<MaterialColumn> columns, Func<string, bool> isExcluded, FaultList faults)
    {
        var before = faults.Count;
        if (constraints.Count > Most)
        {
            faults.Add("/constraints", $"There are at most {Most} constraints.");
            return null;
        }

        var bounds = new List<(int[] Columns, double Low, double High)>();
        for (var i = 0; i < constraints.Count; i++)
        {
            if (Bound(constraints[i], $"/constraints/{i}", columns, isExcluded, faults) is { } bound)
            {
                bounds.Add(bound);
            }
        }

        if (faults.Count > before)
        {
            return null;
        }

        var region = RegionOf(bounds, columns.Count);
        if (IsFeasible(region))
        {
            return region;
        }

        var guilty = Enumerable.Range(0, bounds.Count).Where(i => IsFeasible(RegionOf([.. bounds.Where((_, k) => k != i)], columns.Count))).ToList();
        if (guilty.Count == 0)
        {
            faults.Add("/constraints", "No formula of the pantry at 100 % keeps the constraints together: the least shares add up to more than 100 %, or the greatest to less. Loosen several of them.");
        }

        foreach (var i in guilty)
        {
            faults.Add($"/constraints/{i}", "No formula of the pantry at 100 % keeps this together with the other constraints; without it there is one. Loosen it or another.");
        }

        return null;
    }

    /// <summary>Whether any blend at 100 % keeps all bounds.</summary>
    public static bool IsFeasible(Region region)
    {
        using var programme = new LinearProgramme();
        for (var j = 0; j < region.Low.Length; j++)
        {
            if (region.Low[j] > region.High[j])
            {
                return false;
            }

            programme.Variable(region.Low[j], region.High[j]);
        }

        programme.Row(100, 100, Enumerable.Range(0, region.Low.Length).Select(j => (j, 1.0)).ToArray());
        foreach (var group in region.Groups)
        {
            programme.Row(group.Low, group.High, group.Columns.Select(j => (j, 1.0)).ToArray());
        }

        return programme.Solve() is not null;
    }

    private static Region RegionOf(List<(int[] Columns, double Low, double High)> bounds, int count)
    {
        var (low, high, groups) = (new double[count], new double[count], new List<GroupBound>());
        Array.Fill(high, 100);
        foreach (var (columns, least, most) in bounds)
        {
            if (columns is [var j])
            {
                low[j] = Math.Max(low[j], least);
                high[j] = Math.Min(high[j], most);
            }
            else
            {
                groups.Add(new GroupBound(columns, least, most));
            }
        }

        return new Region(low, high, groups);
    }

    private static (int[] Columns, double Low, double High)? Bound(
        DesignConstraint constraint, string at, IReadOnlyList<MaterialColumn> columns, Func<string, bool> isExcluded, FaultList faults)
    {
        if ((constraint.Ingredient is null) == (constraint.Kind is null))
        {
            faults.Add(at, "Say what is bounded: an ingredient or a kind, one of the two.");
            return null;
        }

        if (constraint.MinPercent is null && constraint.MaxPercent is null)
        {
            faults.Add(at, "Give minPercent, maxPercent or both.");
            return null;
        }

        var fine = faults.Within($"{at}/minPercent", constraint.MinPercent, 0, 100, "A share [%]") & faults.Within($"{at}/maxPercent", constraint.MaxPercent, 0, 100, "A share [%]");
        var low = decimal.Ceiling(10 * (constraint.MinPercent ?? 0)) / 10;
        var high = decimal.Floor(10 * (constraint.MaxPercent ?? 100)) / 10;
        if (fine && low > high)
        {
            faults.Add($"{at}/minPercent", constraint.MinPercent > constraint.MaxPercent
                ? "The least share is greater than the greatest. Exchange the two."
                : "No tenth of a percent lies between the two; formulas are given in tenths. Widen the range.");
            return null;
        }

        int[] chosen = [.. Enumerable.Range(0, columns.Count).Where(j => constraint.Ingredient is { } id ? columns[j].Name == id : columns[j].Ingredient.Kind == constraint.Kind)];
        if (chosen.Length > 0)
        {
            return fine ? (chosen, (double)low, (double)high) : null;
        }

        if (constraint.Ingredient is { } name && isExcluded(name))
        {
            faults.Add($"{at}/ingredient", $"\"{Fault.Shorten(name)}\" is shut out by exclude and cannot be asked for. Take it out of one of the two.");
        }
        else if (constraint.Ingredient is not null)
        {
            faults.Add($"{at}/ingredient", $"\"{Fault.Shorten(constraint.Ingredient)}\" is not in the pantry. Put it there, or leave the constraint out.");
        }
        else if (low > 0)
        {
            faults.Add($"{at}/kind", $"The pantry holds no {KebabCase<IngredientKind>.Word(constraint.Kind!.Value)} that may come in. Put one there, or leave the constraint out.");
        }

        return null;
    }
}
