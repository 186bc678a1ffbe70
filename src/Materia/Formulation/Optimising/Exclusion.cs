using Materia.Catalogue;
using Materia.Formulation.Scopes;

namespace Materia.Formulation.Optimising;

/// <summary>Checked exclusions.</summary>
/// <param name="Scopes">Sets that are shut out.</param>
/// <param name="MaxComedogenic">The highest comedogenic grade allowed.</param>
internal sealed record Exclusion(IReadOnlyList<IngredientScope> Scopes, int? MaxComedogenic)
{
    /// <summary>Whether a material is shut out; a mixture is when one of its parts is.</summary>
    public bool Holds(MaterialColumn column) => Holds(column.Ingredient) || column.Parts.Any(p => Holds(p.Ingredient));

    /// <summary>Whether an ingredient is shut out.</summary>
    public bool Holds(Ingredient ingredient) =>
        Scopes.Any(s => s.Holds(ingredient)) || (MaxComedogenic is { } most && ingredient.Comedogenic.Any(n => n.High > most));

    /// <summary>These and others.</summary>
    public Exclusion And(IEnumerable<IngredientScope> scopes, int? maxComedogenic) =>
        new([.. Scopes, .. scopes], maxComedogenic is { } most ? Math.Min(most, MaxComedogenic ?? most) : MaxComedogenic);
}
