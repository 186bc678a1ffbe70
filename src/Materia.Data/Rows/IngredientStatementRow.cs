using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A statement about one ingredient.</summary>
internal abstract class IngredientStatementRow : StatementRow, IIngredientPart
{
    /// <summary>For the reader of the database.</summary>
    protected IngredientStatementRow()
    {
    }

    protected IngredientStatementRow(RowPlace place, Statement statement)
        : base(place.Release, place.Ordinal, statement) => Ingredient = place.Ingredient;

    /// <inheritdoc/>
    public string Ingredient { get; private init; } = "";
}
