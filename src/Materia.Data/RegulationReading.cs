using Materia.Catalogue.Regulated;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Materia.Data;

/// <summary>Reads a release's limits and allergens: one query for each table, put together by look-up.</summary>
internal sealed class RegulationReading(MateriaContext context, int release)
{
    /// <summary>Reads the limits, in the order in which they were published.</summary>
    public async Task<IReadOnlyList<Limit>> LimitsAsync(CancellationToken cancellation)
    {
        var members = (await RowsAsync<LimitMemberRow>(cancellation)).ToLookup(r => r.RegulatedLimit, r => r.ToRecord(), StringComparer.Ordinal);
        var sites = (await RowsAsync<LimitSiteRow>(cancellation)).ToLookup(r => r.RegulatedLimit, r => r.Site, StringComparer.Ordinal);
        var uses = (await RowsAsync<LimitUseRow>(cancellation)).ToLookup(r => (r.RegulatedLimit, r.IsExcepted), r => r.ProductUse);
        var categories = (await RowsAsync<LimitCategoryRow>(cancellation)).ToLookup(r => r.RegulatedLimit, r => r.IfraCategory, StringComparer.Ordinal);
        var exceptions = (await RowsAsync<LimitExceptionRow>(cancellation)).ToLookup(r => r.RegulatedLimit, r => r.ExceptIngredient, StringComparer.Ordinal);
        return (await RowsAsync<RegulatedLimitRow>(cancellation)).ConvertAll(row => row.ToRecord(
            [.. members[row.Id]],
            new ProductScope
            {
                Exposure = row.Exposure,
                Sites = [.. sites[row.Id]],
                Uses = [.. uses[(row.Id, false)]],
                ExceptUses = [.. uses[(row.Id, true)]],
                IfraCategories = [.. categories[row.Id]],
            },
            [.. exceptions[row.Id]]));
    }

    /// <summary>Reads the allergens, in the order in which they were published.</summary>
    public async Task<IReadOnlyList<Allergen>> AllergensAsync(CancellationToken cancellation)
    {
        var members = (await RowsAsync<AllergenMemberRow>(cancellation)).ToLookup(r => r.Allergen, r => r.ToRecord(), StringComparer.Ordinal);
        return (await RowsAsync<AllergenRow>(cancellation)).ConvertAll(row => row.ToRecord([.. members[row.Id]]));
    }

    private Task<List<T>> RowsAsync<T>(CancellationToken cancellation)
        where T : ContentRow =>
        context.Set<T>().AsNoTracking().Where(r => r.Release == release).OrderBy(r => r.Ordinal).ToListAsync(cancellation);
}
