using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of what counts towards limits.</summary>
internal sealed class LimitMemberConfiguration(SqlDialect dialect) : RegulatedMemberConfiguration<LimitMemberRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<LimitMemberRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.RegulatedLimit, r.Ordinal });
        base.Configure(builder);
        builder.HasOne<RegulatedLimitRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.RegulatedLimit }).OnDelete(DeleteBehavior.Cascade);
    }
}
