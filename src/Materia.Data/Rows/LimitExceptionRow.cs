namespace Materia.Data.Rows;

/// <summary>An ingredient that a limit does not mean.</summary>
internal sealed class LimitExceptionRow : LimitPartRow
{
    public LimitExceptionRow(int release, int ordinal, string limit, string ingredient)
        : base(release, ordinal, limit) => ExceptIngredient = ingredient;

    /// <summary>For the reader of the database.</summary>
    private LimitExceptionRow()
    {
    }

    /// <summary>The id of the ingredient.</summary>
    public string ExceptIngredient { get; private init; } = "";
}
