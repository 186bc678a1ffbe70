using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A family of allergens that an ingredient's origin belongs to.</summary>
internal sealed class OriginAllergenFamilyRow : ContentRow, IIngredientPart
{
    public OriginAllergenFamilyRow(RowPlace place, AllergenFamily family)
        : base(place.Release, place.Ordinal)
    {
        Ingredient = place.Ingredient;
        Family = family;
    }

    /// <summary>For the reader of the database.</summary>
    private OriginAllergenFamilyRow()
    {
    }

    /// <inheritdoc/>
    public string Ingredient { get; private init; } = "";

    /// <summary>The family.</summary>
    public AllergenFamily Family { get; private init; }
}
