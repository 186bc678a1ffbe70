using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Materia.Data.Engines;

/// <summary>Writing many rows to SQLite: one prepared order, run for each.</summary>
internal static class SqliteInsert
{
    /// <summary>Writes rows of one class, within the transaction that is open.</summary>
    /// <exception cref="SqliteException">A constraint refused a row; the message names it.</exception>
    public static async Task RunAsync(MateriaContext context, TableColumns columns, IEnumerable<object> rows, CancellationToken cancellation)
    {
        var parameters = Enumerable.Range(0, columns.Count).Select(i => new SqliteParameter($"$p{i}", null)).ToList();
        await using var command = (SqliteCommand)context.Database.GetDbConnection().CreateCommand();
        command.Transaction = (SqliteTransaction?)context.Database.CurrentTransaction?.GetDbTransaction();
        command.CommandText = $"INSERT INTO {columns.Table} ({columns.Names}) VALUES ({string.Join(", ", parameters.Select(p => p.ParameterName))})";
        command.Parameters.AddRange(parameters);
        foreach (var row in rows)
        {
            for (var i = 0; i < parameters.Count; i++)
            {
                parameters[i].Value = columns.Value(row, i) ?? DBNull.Value;
            }

            await command.ExecuteNonQueryAsync(cancellation);
        }
    }
}
