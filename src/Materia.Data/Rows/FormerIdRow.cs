namespace Materia.Data.Rows;

/// <summary>An id that once named an ingredient.</summary>
internal sealed class FormerIdRow : ContentRow, IIngredientPart
{
    public FormerIdRow(RowPlace place, string id)
        : base(place.Release, place.Ordinal)
    {
        Ingredient = place.Ingredient;
        Id = id;
    }

    /// <summary>For the reader of the database.</summary>
    private FormerIdRow()
    {
    }

    /// <summary>The former id; it names one ingredient of the release at most.</summary>
    public string Id { get; private init; } = "";

    /// <inheritdoc/>
    public string Ingredient { get; private init; } = "";
}
