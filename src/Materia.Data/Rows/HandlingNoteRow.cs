using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A note on working with an ingredient or keeping it.</summary>
internal sealed class HandlingNoteRow : IngredientStatementRow
{
    public HandlingNoteRow(RowPlace place, HandlingNote note)
        : base(place, note)
    {
        Topic = note.Topic;
        Phase = note.Phase;
        Text = note.Text;
    }

    /// <summary>For the reader of the database.</summary>
    private HandlingNoteRow()
    {
    }

    /// <inheritdoc cref="HandlingNote.Topic"/>
    public HandlingTopic Topic { get; private init; }

    /// <inheritdoc cref="HandlingNote.Phase"/>
    public ProcessPhase? Phase { get; private init; }

    /// <inheritdoc cref="HandlingNote.Text"/>
    public string Text { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public HandlingNote ToRecord() => new()
    {
        Topic = Topic,
        Phase = Phase,
        Text = Text,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
