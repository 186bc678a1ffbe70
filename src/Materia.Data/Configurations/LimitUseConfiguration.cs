using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the types of product that limits bind or leave out; a limit does one of the two.</summary>
internal sealed class LimitUseConfiguration(SqlDialect dialect) : LimitPartConfiguration<LimitUseRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<LimitUseRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.RegulatedLimit, r.ProductUse });
        base.Configure(builder);
        builder.HasOne<ProductUseRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.ProductUse }).OnDelete(DeleteBehavior.NoAction);
    }
}
