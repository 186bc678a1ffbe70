using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A work, or another place, that statements come from.</summary>
internal sealed class SourceRow : ContentRow
{
    public SourceRow(int release, int ordinal, Source source)
        : base(release, ordinal)
    {
        Id = source.Id;
        Kind = source.Kind;
        Authors = source.Authors;
        Title = source.Title;
        Year = source.Year;
        Locator = source.Locator;
        Licence = source.Licence;
        Note = source.Note;
    }

    /// <summary>For the reader of the database.</summary>
    private SourceRow()
    {
    }

    /// <inheritdoc cref="Source.Id"/>
    public string Id { get; private init; } = "";

    /// <inheritdoc cref="Source.Kind"/>
    public SourceKind Kind { get; private init; }

    /// <inheritdoc cref="Source.Authors"/>
    public string? Authors { get; private init; }

    /// <inheritdoc cref="Source.Title"/>
    public string Title { get; private init; } = "";

    /// <inheritdoc cref="Source.Year"/>
    public int? Year { get; private init; }

    /// <inheritdoc cref="Source.Locator"/>
    public string? Locator { get; private init; }

    /// <inheritdoc cref="Source.Licence"/>
    public string? Licence { get; private init; }

    /// <inheritdoc cref="Source.Note"/>
    public string? Note { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public Source ToRecord() => new()
    {
        Id = Id,
        Kind = Kind,
        Authors = Authors,
        Title = Title,
        Year = Year,
        Locator = Locator,
        Licence = Licence,
        Note = Note,
    };
}
