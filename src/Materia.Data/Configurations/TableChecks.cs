using Materia.Data.Engines;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>Adding a named check to a table.</summary>
internal static class TableChecks
{
    /// <summary>Adds the check <c>ck_table_name</c>.</summary>
    /// <param name="row">The table's row.</param>
    /// <param name="name">What the check holds, in snake case; an engine names it when it refuses a row.</param>
    /// <param name="condition">The condition; it is met when it is true or null.</param>
    public static EntityTypeBuilder<T> HasCheck<T>(this EntityTypeBuilder<T> row, string name, string condition)
        where T : class
    {
        var table = SnakeCaseNames.Of(typeof(T).Name[..^"Row".Length]);
        row.ToTable(t => t.HasCheckConstraint($"ck_{table}_{name}", condition));
        return row;
    }
}
