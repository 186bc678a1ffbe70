using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the inventory's entries.</summary>
internal sealed class InventoryEntryConfiguration : IEntityTypeConfiguration<InventoryEntryRow>
{
    /// <inheritdoc/>
    public void Configure(EntityTypeBuilder<InventoryEntryRow> builder)
    {
        builder.HasKey(r => r.Ordinal);
        builder.Property(r => r.Ordinal).ValueGeneratedNever();
        builder.HasIndex(r => r.InciName).IsUnique();
        builder.HasCheck("ordinal_is_not_negative", "ordinal >= 0");
        builder.HasCheck("inci_name_is_not_empty", "trim(inci_name) <> ''");
    }
}
