using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the inventory's CAS and EC numbers.</summary>
internal sealed class InventoryNumberConfiguration(SqlDialect dialect) : IEntityTypeConfiguration<InventoryNumberRow>
{
    /// <inheritdoc/>
    public void Configure(EntityTypeBuilder<InventoryNumberRow> builder)
    {
        builder.HasKey(r => new { r.Entry, r.Registry, r.Ordinal });
        builder.HasOne<InventoryEntryRow>().WithMany().HasForeignKey(r => r.Entry).OnDelete(DeleteBehavior.Cascade);
        builder.HasCheck("registry_is_known", Check.IsWord<Registry>("registry"));
        builder.HasCheck("cas_is_valid", $"registry <> 'cas' OR ({dialect.IsCas("number")})");
        builder.HasCheck("ec_is_valid", $"registry <> 'ec' OR ({dialect.IsEc("number")})");
    }
}
