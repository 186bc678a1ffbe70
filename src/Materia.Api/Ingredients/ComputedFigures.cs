using Materia.Chemistry;
using Materia.Chemistry.Melting;

namespace Materia.Api.Ingredients;

/// <summary>What the service worked out for an ingredient. None of it was measured, and none of it takes the place of what was.</summary>
public sealed record ComputedFigures
{
    /// <summary>
    /// How the ingredient melts on its own, with the key of the method, the share of the fat that it rests on, and its warnings; among
    /// these, where a measured melting figure lies outside the computed band.
    /// </summary>
    public BlendMelting? Melting { get; init; }

    /// <summary>The figures that are asked for, of an ingredient of the release.</summary>
    public static ComputedFigures Of(Catalogue.Ingredient ingredient, Catalogue.Release release, IReadOnlyList<Included> asked) => new()
    {
        Melting = asked.Contains(Included.Melting) ? IngredientMelting.Of(ingredient, release) : null,
    };
}

/// <summary>What can be asked to stand in a record beside what the catalogue says.</summary>
public enum Included
{
    /// <summary>How the ingredient melts on its own.</summary>
    Melting,
}
