using Materia.Data.Engines;
using Microsoft.EntityFrameworkCore;

namespace Materia.Data;

/// <summary>The model on PostgreSQL.</summary>
public sealed class PostgreSqlMateriaContext(DbContextOptions<PostgreSqlMateriaContext> options) : MateriaContext(options)
{
    internal override SqlDialect Dialect { get; } = new PostgreSqlDialect();

    internal override Task LockPublishingAsync(CancellationToken cancellation) =>
        Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({PostgreSqlLocks.Publishing})", cancellation);

    internal override Task InsertAsync(TableColumns columns, IEnumerable<object> rows, CancellationToken cancellation) =>
        PostgreSqlInsert.RunAsync(this, columns, rows, cancellation);
}
