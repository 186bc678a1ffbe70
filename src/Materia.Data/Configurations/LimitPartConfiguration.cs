using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>What every table of parts of a limit has: the limit that the row goes with.</summary>
/// <typeparam name="T">The row.</typeparam>
internal abstract class LimitPartConfiguration<T>(SqlDialect dialect) : ContentConfiguration<T>(dialect)
    where T : LimitPartRow
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<T> builder)
    {
        base.Configure(builder);
        builder.HasOne<RegulatedLimitRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.RegulatedLimit }).OnDelete(DeleteBehavior.Cascade);
    }
}
