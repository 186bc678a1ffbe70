namespace Materia.Data.Rows;

/// <summary>A row that belongs to one ingredient.</summary>
internal interface IIngredientPart
{
    /// <summary>The ingredient's id.</summary>
    string Ingredient { get; }
}
