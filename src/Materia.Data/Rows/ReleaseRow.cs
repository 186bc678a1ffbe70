namespace Materia.Data.Rows;

/// <summary>The header of a release. Deleting it deletes all of the release's content.</summary>
internal sealed class ReleaseRow
{
    /// <inheritdoc cref="ReleaseHeader.Number"/>
    public required int Number { get; init; }

    /// <inheritdoc cref="ReleaseHeader.Published"/>
    public required DateTimeOffset Published { get; init; }

    /// <inheritdoc cref="ReleaseHeader.Checksum"/>
    public required string Checksum { get; init; }

    /// <inheritdoc cref="ReleaseHeader.Origin"/>
    public required ReleaseOrigin Origin { get; init; }

    /// <inheritdoc cref="ReleaseHeader.IngredientCount"/>
    public required int IngredientCount { get; init; }

    /// <inheritdoc cref="ReleaseHeader.StatementCount"/>
    public required int StatementCount { get; init; }

    /// <inheritdoc cref="ReleaseHeader.SourceCount"/>
    public required int SourceCount { get; init; }

    /// <summary>The header that callers see.</summary>
    public ReleaseHeader ToHeader() => new(Number, Published, Checksum, Origin, IngredientCount, StatementCount, SourceCount);
}
