using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>The columns that every statement has: how it was seen, and where.</summary>
internal abstract class StatementRow : ContentRow
{
    /// <summary>For the reader of the database.</summary>
    protected StatementRow()
    {
    }

    protected StatementRow(int release, int ordinal, Statement statement)
        : base(release, ordinal)
    {
        Evidence = statement.Evidence;
        Source = statement.Source;
        Locator = statement.Locator;
        CheckIn = statement.CheckIn;
        Note = statement.Note;
    }

    /// <inheritdoc cref="Statement.Evidence"/>
    public Evidence Evidence { get; private init; }

    /// <inheritdoc cref="Statement.Source"/>
    public string Source { get; private init; } = "";

    /// <inheritdoc cref="Statement.Locator"/>
    public string? Locator { get; private init; }

    /// <inheritdoc cref="Statement.CheckIn"/>
    public string? CheckIn { get; private init; }

    /// <inheritdoc cref="Statement.Note"/>
    public string? Note { get; private init; }
}
