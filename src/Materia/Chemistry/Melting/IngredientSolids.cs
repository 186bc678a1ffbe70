using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>Solid contents of one ingredient on its own, without curve and band.</summary>
public static class IngredientSolids
{
    /// <summary>Under this share of known species [1] nothing is given, as for a blend.</summary>
    private const double LeastCoverage = 0.8;

    /// <summary>The solid content of <paramref name="ingredient"/> at each temperature [%]; <see langword="null"/> when under four fifths of it have a composition to work from.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="release">The release that it comes from.</param>
    /// <param name="temperatures">Temperatures [Cel].</param>
    public static double[]? At(Ingredient ingredient, Release release, IReadOnlyList<double> temperatures)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        ArgumentNullException.ThrowIfNull(temperatures);
        var blend = new Blend([new BlendComponent(ingredient.Id, 1, ingredient)], release);
        var species = MeltingSpace.For(blend).Compose(blend);
        if (species.FatMass <= 0 || species.Coverage < LeastCoverage)
        {
            return null;
        }

        var equilibrium = new PhaseEquilibrium(species.System(ClassTable.Of));
        return [.. temperatures.Select(equilibrium.SolidContentAt)];
    }
}
