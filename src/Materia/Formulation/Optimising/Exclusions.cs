using Materia.Catalogue;

namespace Materia.Formulation.Optimising;

/// <summary>Materials that must not come into a proposal. What a formula holds already stays, unless it is to be done without.</summary>
public sealed record Exclusions
{
    /// <summary>Kingdoms, such as <c>animal</c>.</summary>
    public IReadOnlyList<OriginKind> Origins { get; init; } = [];

    /// <summary>Allergen families, such as <c>tree-nut</c>.</summary>
    public IReadOnlyList<AllergenFamily> AllergenFamilies { get; init; } = [];

    /// <summary>Ids of ingredients.</summary>
    public IReadOnlyList<string> Ingredients { get; init; } = [];

    /// <summary>Kinds, such as <c>wax</c>.</summary>
    public IReadOnlyList<IngredientKind> Kinds { get; init; } = [];

    /// <summary>The highest comedogenic grade allowed, 0 to 5. An ingredient without a grade is not shut out by it, since nobody tested it; a warning says so.</summary>
    public int? MaxComedogenic { get; init; }

    /// <summary>Whether <paramref name="ingredient"/> is shut out.</summary>
    public bool Hold(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return Ingredients.Contains(ingredient.Id, StringComparer.Ordinal)
            || Kinds.Contains(ingredient.Kind)
            || (ingredient.Origin is { } origin && (Origins.Contains(origin.From) || origin.AllergenFamilies.Any(f => AllergenFamilies.Contains(f))))
            || (MaxComedogenic is { } most && ingredient.Comedogenic.Any(n => n.High > most));
    }
}
