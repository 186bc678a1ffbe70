namespace Materia.Data.Rows;

/// <summary>A type of product that a limit binds or leaves out.</summary>
internal sealed class LimitUseRow : LimitPartRow
{
    public LimitUseRow(int release, int ordinal, string limit, string use, bool isExcepted)
        : base(release, ordinal, limit)
    {
        ProductUse = use;
        IsExcepted = isExcepted;
    }

    /// <summary>For the reader of the database.</summary>
    private LimitUseRow()
    {
    }

    /// <summary>The key of the type of product.</summary>
    public string ProductUse { get; private init; } = "";

    /// <summary>True where the limit leaves it out, false where it binds it.</summary>
    public bool IsExcepted { get; private init; }
}
