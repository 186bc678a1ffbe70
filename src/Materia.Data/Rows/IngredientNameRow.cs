using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A name of an ingredient.</summary>
internal sealed class IngredientNameRow : IngredientStatementRow
{
    public IngredientNameRow(RowPlace place, IngredientName name)
        : base(place, name)
    {
        Text = name.Text;
        Kind = name.Kind;
        Language = name.Language;
    }

    /// <summary>For the reader of the database.</summary>
    private IngredientNameRow()
    {
    }

    /// <inheritdoc cref="IngredientName.Text"/>
    public string Text { get; private init; } = "";

    /// <inheritdoc cref="IngredientName.Kind"/>
    public NameKind Kind { get; private init; }

    /// <inheritdoc cref="IngredientName.Language"/>
    public string? Language { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public IngredientName ToRecord() => new()
    {
        Text = Text,
        Kind = Kind,
        Language = Language,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
