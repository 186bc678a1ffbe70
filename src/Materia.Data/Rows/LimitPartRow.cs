namespace Materia.Data.Rows;

/// <summary>A row that belongs to a limit.</summary>
internal abstract class LimitPartRow : ContentRow
{
    /// <summary>For the reader of the database.</summary>
    protected LimitPartRow()
    {
    }

    protected LimitPartRow(int release, int ordinal, string limit)
        : base(release, ordinal) => RegulatedLimit = limit;

    /// <summary>The key of the limit.</summary>
    public string RegulatedLimit { get; private init; } = "";
}
