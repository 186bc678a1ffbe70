using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>What an ingredient is; one row at most for each, its ordinal is 0.</summary>
internal sealed class IngredientDescriptionRow : IngredientStatementRow
{
    public IngredientDescriptionRow(RowPlace place, Description description)
        : base(place, description)
    {
        Text = description.Text;
    }

    /// <summary>For the reader of the database.</summary>
    private IngredientDescriptionRow()
    {
    }

    /// <inheritdoc cref="Description.Text"/>
    public string Text { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public Description ToRecord() => new()
    {
        Text = Text,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
