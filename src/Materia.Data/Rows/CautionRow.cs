using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A caution of an ingredient.</summary>
internal sealed class CautionRow : IngredientStatementRow
{
    public CautionRow(RowPlace place, Caution caution)
        : base(place, caution)
    {
        Text = caution.Text;
    }

    /// <summary>For the reader of the database.</summary>
    private CautionRow()
    {
    }

    /// <inheritdoc cref="Caution.Text"/>
    public string Text { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public Caution ToRecord() => new()
    {
        Text = Text,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
