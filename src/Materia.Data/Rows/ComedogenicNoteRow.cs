using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A grade of the rabbit-ear assay of an ingredient.</summary>
internal sealed class ComedogenicNoteRow : IngredientStatementRow
{
    public ComedogenicNoteRow(RowPlace place, ComedogenicNote note)
        : base(place, note)
    {
        Low = note.Low;
        High = note.High;
        Irritancy = note.Irritancy;
        Tested = note.Tested;
    }

    /// <summary>For the reader of the database.</summary>
    private ComedogenicNoteRow()
    {
    }

    /// <inheritdoc cref="ComedogenicNote.Low"/>
    public int Low { get; private init; }

    /// <inheritdoc cref="ComedogenicNote.High"/>
    public int High { get; private init; }

    /// <inheritdoc cref="ComedogenicNote.Irritancy"/>
    public int? Irritancy { get; private init; }

    /// <inheritdoc cref="ComedogenicNote.Tested"/>
    public string Tested { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public ComedogenicNote ToRecord() => new()
    {
        Low = Low,
        High = High,
        Irritancy = Irritancy,
        Tested = Tested,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
