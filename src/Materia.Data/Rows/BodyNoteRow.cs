using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>What an ingredient was found to do to hair or skin.</summary>
internal sealed class BodyNoteRow : IngredientStatementRow
{
    public BodyNoteRow(RowPlace place, BodyNote note)
        : base(place, note)
    {
        Subject = note.Subject;
        Text = note.Text;
    }

    /// <summary>For the reader of the database.</summary>
    private BodyNoteRow()
    {
    }

    /// <inheritdoc cref="BodyNote.Subject"/>
    public BodySubject Subject { get; private init; }

    /// <inheritdoc cref="BodyNote.Text"/>
    public string Text { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public BodyNote ToRecord() => new()
    {
        Subject = Subject,
        Text = Text,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
