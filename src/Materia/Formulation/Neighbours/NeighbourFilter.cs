using Materia.Catalogue;
using Materia.Formulation.Scopes;

namespace Materia.Formulation.Neighbours;

/// <summary>Which ingredients come into question as neighbours.</summary>
public sealed record NeighbourFilter
{
    /// <summary>How many neighbours are given when nothing else is asked.</summary>
    public const int UsualLimit = 10;

    /// <summary>How many are given at most.</summary>
    public const int GreatestLimit = 50;

    /// <summary>The ids that are at hand; all of the catalogue when empty.</summary>
    public IReadOnlyList<string> Pantry { get; init; } = [];

    /// <summary>The kinds, one of which it must be; all when empty.</summary>
    public IReadOnlyList<IngredientKind> Kinds { get; init; } = [];

    /// <summary>Sets that it must not belong to.</summary>
    public IReadOnlyList<IngredientScope> Excluded { get; init; } = [];

    /// <summary>The highest comedogenic grade allowed, 0 to 5. One without a grade is not shut out, since nobody tested it.</summary>
    public int? MaxComedogenic { get; init; }

    /// <summary>How many to give, 1 to <see cref="GreatestLimit"/>.</summary>
    public int Limit { get; init; } = UsualLimit;

    internal bool Lets(Ingredient ingredient)
    {
        if ((Pantry.Count > 0 && !Pantry.Contains(ingredient.Id)) || (Kinds.Count > 0 && !Kinds.Contains(ingredient.Kind)))
        {
            return false;
        }

        foreach (var scope in Excluded)
        {
            if (scope.Holds(ingredient))
            {
                return false;
            }
        }

        return MaxComedogenic is not { } most || !ingredient.Comedogenic.Any(n => n.High > most);
    }
}
