using Materia.Catalogue;
using Materia.Data.Rows;

namespace Materia.Data;

/// <summary>Writes a release, within the transaction that the context has open.</summary>
internal static class ReleaseWriting
{
    /// <summary>Writes header and content table by table, and leaves the context as empty as it was, whatever happens.</summary>
    public static async Task WriteAsync(
        MateriaContext context,
        int number,
        CatalogueContent content,
        string checksum,
        ReleaseOrigin origin,
        DateTimeOffset now,
        CancellationToken cancellation)
    {
        var tables = ReleaseRows.Of(number, content).ToList();
        var header = new ReleaseRow
        {
            Number = number,
            Published = ToMicroseconds(now),
            Checksum = checksum,
            Origin = origin,
            IngredientCount = content.Ingredients.Count,
            StatementCount = tables.Sum(rows => rows.OfType<StatementRow>().Count()),
            SourceCount = content.Sources.Count,
        };
        context.ChangeTracker.AutoDetectChangesEnabled = false;
        try
        {
            await SaveAsync([header]);
            foreach (var rows in tables)
            {
                await SaveAsync(rows);
            }
        }
        finally
        {
            context.ChangeTracker.Clear();
            context.ChangeTracker.AutoDetectChangesEnabled = true;
        }

        // A table at a time: the parents are there already, and nothing has to be sorted by its keys.
        async Task SaveAsync(IReadOnlyCollection<object> rows)
        {
            context.AddRange(rows);
            await context.SaveChangesAsync(cancellation);
            context.ChangeTracker.Clear();
        }
    }

    // PostgreSQL keeps no more; a release has the same time on each engine, in memory and read back.
    private static DateTimeOffset ToMicroseconds(DateTimeOffset time)
    {
        var utc = time.ToUniversalTime();
        return utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMicrosecond));
    }
}
