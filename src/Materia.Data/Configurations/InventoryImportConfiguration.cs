using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the one import of the inventory of names.</summary>
internal sealed class InventoryImportConfiguration(SqlDialect dialect) : IEntityTypeConfiguration<InventoryImportRow>
{
    /// <inheritdoc/>
    public void Configure(EntityTypeBuilder<InventoryImportRow> builder)
    {
        builder.HasKey(r => r.Id);
        builder.Property(r => r.Id).ValueGeneratedNever();
        builder.HasCheck("is_the_only_one", FormattableString.Invariant($"id = {InventoryImportRow.Only}"));
        builder.HasCheck("checksum_is_sha256", dialect.IsChecksum("checksum"));
        builder.HasCheck("count_is_positive", "entry_count > 0");
    }
}
