using Materia.Data.Engines;
using Microsoft.EntityFrameworkCore;

namespace Materia.Data.Configurations;

/// <summary>Keeps words out of columns of decimals on an engine that stores decimals as text.</summary>
internal static class DecimalColumns
{
    /// <summary>Adds a check to each column of decimals, where the engine needs one.</summary>
    public static void Check(ModelBuilder model, SqlDialect dialect)
    {
        foreach (var row in model.Model.GetEntityTypes())
        {
            var decimals = row.GetProperties().Where(p => p.ClrType == typeof(decimal) || p.ClrType == typeof(decimal?));
            foreach (var column in decimals.Select(p => p.GetColumnName()))
            {
                if (dialect.IsDecimal(column) is { } condition)
                {
                    row.AddCheckConstraint($"ck_{row.GetTableName()}_{column}_is_decimal", condition);
                }
            }
        }
    }
}
