using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>What every table of statements has: nothing is stated without a grade and a source that the release holds.</summary>
/// <typeparam name="T">The row.</typeparam>
internal abstract class StatementConfiguration<T>(SqlDialect dialect) : ContentConfiguration<T>(dialect)
    where T : StatementRow
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<T> builder)
    {
        base.Configure(builder);
        BelongsToSource(builder, nameof(StatementRow.Source));
        BelongsToSource(builder, nameof(StatementRow.CheckIn));
        builder.HasCheck("evidence_is_known", Check.IsWord<Evidence>("evidence"));
        builder.HasCheck("published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
    }

    // A source is not deleted under its statements; only with the whole release.
    private static void BelongsToSource(EntityTypeBuilder<T> builder, string key) =>
        builder.HasOne<SourceRow>().WithMany().HasForeignKey(nameof(ContentRow.Release), key).OnDelete(DeleteBehavior.NoAction);
}
