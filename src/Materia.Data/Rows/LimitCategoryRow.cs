namespace Materia.Data.Rows;

/// <summary>A category of the fragrance standards that a limit binds.</summary>
internal sealed class LimitCategoryRow : LimitPartRow
{
    public LimitCategoryRow(int release, int ordinal, string limit, string category)
        : base(release, ordinal, limit) => IfraCategory = category;

    /// <summary>For the reader of the database.</summary>
    private LimitCategoryRow()
    {
    }

    /// <summary>The category.</summary>
    public string IfraCategory { get; private init; } = "";
}
