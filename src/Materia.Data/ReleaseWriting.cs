using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;

namespace Materia.Data;

/// <summary>Writes a release, within the transaction that the context has open.</summary>
internal static class ReleaseWriting
{
    /// <summary>Writes header and content table by table, parents first.</summary>
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
        foreach (var rows in tables.Prepend<IReadOnlyCollection<object>>([header]).Where(rows => rows.Count > 0))
        {
            var columns = new TableColumns(context, rows.First().GetType());
            await context.InsertAsync(columns, rows, cancellation);
        }
    }

    // PostgreSQL keeps no more; a release has the same time on each engine, in memory and read back.
    private static DateTimeOffset ToMicroseconds(DateTimeOffset time)
    {
        var utc = time.ToUniversalTime();
        return utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMicrosecond));
    }
}
