using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of releases. A checksum may come again: going back to an older state is a new release.</summary>
internal sealed class ReleaseConfiguration(SqlDialect dialect) : IEntityTypeConfiguration<ReleaseRow>
{
    /// <inheritdoc/>
    public void Configure(EntityTypeBuilder<ReleaseRow> builder)
    {
        builder.HasKey(r => r.Number);
        builder.Property(r => r.Number).ValueGeneratedNever();
        builder.HasCheck("number_is_positive", "number > 0");
        builder.HasCheck("checksum_is_sha256", dialect.IsChecksum("checksum"));
        builder.HasCheck("origin_is_known", Check.IsWord<ReleaseOrigin>("origin"));
        builder.HasCheck("counts_are_not_negative", "ingredient_count >= 0 AND statement_count >= 0 AND source_count >= 0");
    }
}
