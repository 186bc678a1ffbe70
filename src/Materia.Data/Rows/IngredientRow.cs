using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>An ingredient; everything said about it stands in the other tables.</summary>
internal sealed class IngredientRow : ContentRow
{
    public IngredientRow(int release, int ordinal, Ingredient ingredient)
        : base(release, ordinal)
    {
        Id = ingredient.Id;
        Kind = ingredient.Kind;
    }

    /// <summary>For the reader of the database.</summary>
    private IngredientRow()
    {
    }

    /// <inheritdoc cref="Ingredient.Id"/>
    public string Id { get; private init; } = "";

    /// <inheritdoc cref="Ingredient.Kind"/>
    public IngredientKind Kind { get; private init; }
}
