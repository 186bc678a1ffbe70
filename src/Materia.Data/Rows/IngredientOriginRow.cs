using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>What an ingredient is made from; one row at most for each, its ordinal is 0.</summary>
internal sealed class IngredientOriginRow : IngredientStatementRow
{
    public IngredientOriginRow(RowPlace place, Origin origin)
        : base(place, origin)
    {
        Kingdom = origin.From;
        Species = origin.Species;
        Part = origin.Part;
        Extraction = origin.Extraction;
    }

    /// <summary>For the reader of the database.</summary>
    private IngredientOriginRow()
    {
    }

    /// <inheritdoc cref="Origin.From"/>
    public OriginKind Kingdom { get; private init; }

    /// <inheritdoc cref="Origin.Species"/>
    public string? Species { get; private init; }

    /// <inheritdoc cref="Origin.Part"/>
    public string? Part { get; private init; }

    /// <inheritdoc cref="Origin.Extraction"/>
    public string? Extraction { get; private init; }

    /// <summary>The catalogue's record of this row and its families of allergens.</summary>
    public Origin ToRecord(IReadOnlyList<AllergenFamily> families) => new()
    {
        From = Kingdom,
        Species = Species,
        Part = Part,
        Extraction = Extraction,
        AllergenFamilies = families,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
