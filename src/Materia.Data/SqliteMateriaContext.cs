using Materia.Data.Engines;
using Microsoft.EntityFrameworkCore;

namespace Materia.Data;

/// <summary>The model on SQLite.</summary>
public sealed class SqliteMateriaContext(DbContextOptions<SqliteMateriaContext> options) : MateriaContext(options)
{
    internal override SqlDialect Dialect { get; } = new SqliteDialect();

    // A transaction is begun with the writer's lock of the file (BEGIN IMMEDIATE): it is alone already.
    internal override Task LockPublishingAsync(CancellationToken cancellation) => Task.CompletedTask;

    internal override Task InsertAsync(TableColumns columns, IEnumerable<object> rows, CancellationToken cancellation) =>
        SqliteInsert.RunAsync(this, columns, rows, cancellation);
}
