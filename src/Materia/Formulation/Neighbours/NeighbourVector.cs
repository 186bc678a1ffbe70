using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Melting;

namespace Materia.Formulation.Neighbours;

/// <summary>One ingredient as a point among the others: its figures, and what it is for.</summary>
internal sealed class NeighbourVector
{
    private NeighbourVector(Ingredient ingredient, double[] values)
    {
        Ingredient = ingredient;
        Values = values;
        Groups = [.. ingredient.SubstitutionGroups.Select(g => g.Group)];
        Functions = [.. ingredient.Functions.Select(f => f.Function).Distinct(StringComparer.Ordinal)];
        Constituents = ingredient.Constituents
            .GroupBy(c => c.Cas ?? c.Substance, StringComparer.Ordinal)
            .Select(g => g.FirstOrDefault(c => c.Used) ?? g.First())
            .Select(c => (Key: c.Cas ?? c.Substance, c.Substance, Percent: Central(c)))
            .Where(c => c.Percent > 0)
            .GroupBy(c => c.Key, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => (g.First().Substance, g.First().Percent), StringComparer.Ordinal);
    }

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>Its values in the order of <see cref="Axes.All"/>; not a number where one is not known.</summary>
    public double[] Values { get; }

    /// <summary>The keys of its substitution groups, in the record's order.</summary>
    public string[] Groups { get; }

    /// <summary>Its functions.</summary>
    public string[] Functions { get; }

    /// <summary>Its constituents by CAS number, or by name where there is none [%].</summary>
    public Dictionary<string, (string Name, double Percent)> Constituents { get; }

    /// <summary>Reads the vector of <paramref name="ingredient"/>.</summary>
    public static NeighbourVector Of(Ingredient ingredient, Release release)
    {
        var solids = Kinds.IsLipid(ingredient.Kind) ? IngredientSolids.At(ingredient, release, Axes.SolidTemperatures) : null;
        var input = new AxisInput(ingredient, MaterialIndex.For(release).Find(ingredient), solids);
        return new(ingredient, [.. Axes.All.Select(a => a.Value(input) ?? double.NaN)]);
    }

    private static double Central(Constituent constituent) => (double)(constituent.Typical
        ?? (constituent is { Low: { } low, High: { } high } ? (low + high) / 2 : (constituent.Low ?? (constituent.High / 2)) ?? 0));
}
