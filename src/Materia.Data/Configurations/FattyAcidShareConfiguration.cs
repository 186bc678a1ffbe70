using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of shares of fatty acids; an acid stands once in a profile.</summary>
internal sealed class FattyAcidShareConfiguration(SqlDialect dialect) : StatementConfiguration<FattyAcidShareRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<FattyAcidShareRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient, r.Profile, r.Ordinal });
        base.Configure(builder);
        builder.HasOne<FattyAcidProfileRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.Ingredient, r.Profile }).OnDelete(DeleteBehavior.Cascade);
        builder.HasOne<FattyAcidRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.Acid }).OnDelete(DeleteBehavior.NoAction);
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.Profile, r.Acid }).IsUnique();
        builder.HasCheck("has_a_value", Check.AnyPresent("low", "typical", "high"));
        builder.HasCheck("range_in_order", Check.InOrder(Dialect, "low", "typical", "high"));
        builder.HasCheck("percent_in_range", Check.Between(Dialect, 0, 100, "low", "typical", "high"));
    }
}
