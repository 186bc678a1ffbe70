using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Materia.Data.Engines;

/// <summary>Writing many rows to PostgreSQL: a binary COPY, which takes one exchange with the server for a whole table.</summary>
internal static class PostgreSqlInsert
{
    /// <summary>Writes rows of one class, within the transaction that is open.</summary>
    /// <exception cref="PostgresException">A constraint refused a row; the message names it.</exception>
    public static async Task RunAsync(MateriaContext context, TableColumns columns, IEnumerable<object> rows, CancellationToken cancellation)
    {
        var connection = (NpgsqlConnection)context.Database.GetDbConnection();
        var types = columns.Types;
        await using var copy = await connection.BeginBinaryImportAsync(
            $"COPY {columns.Table} ({columns.Names}) FROM STDIN (FORMAT BINARY)", cancellation);
        foreach (var row in rows)
        {
            await copy.StartRowAsync(cancellation);
            for (var i = 0; i < columns.Count; i++)
            {
                if (columns.Value(row, i) is { } value)
                {
                    await copy.WriteAsync(value, types[i], cancellation);
                }
                else
                {
                    await copy.WriteNullAsync(cancellation);
                }
            }
        }

        await copy.CompleteAsync(cancellation);
    }
}
