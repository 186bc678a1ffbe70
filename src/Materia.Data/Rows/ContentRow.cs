namespace Materia.Data.Rows;

/// <summary>A row of a release's content. Rows are written once and never changed.</summary>
internal abstract class ContentRow
{
    /// <summary>For the reader of the database.</summary>
    protected ContentRow()
    {
    }

    protected ContentRow(int release, int ordinal)
    {
        Release = release;
        Ordinal = ordinal;
    }

    /// <summary>The number of the release.</summary>
    public int Release { get; private init; }

    /// <summary>The place in the list that the row belongs to, from 0.</summary>
    public int Ordinal { get; private init; }
}
