using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of shares of triacylglycerols; a name stands once in a profile. That it names known chains the checks of the seed files see to.</summary>
internal sealed class TriacylglycerolShareConfiguration(SqlDialect dialect) : StatementConfiguration<TriacylglycerolShareRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<TriacylglycerolShareRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient, r.Profile, r.Ordinal });
        base.Configure(builder);
        builder.HasOne<TriacylglycerolProfileRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.Ingredient, r.Profile }).OnDelete(DeleteBehavior.Cascade);
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.Profile, r.Species }).IsUnique();
        builder.HasCheck("species_not_blank", Check.NotBlank("species"));
        builder.HasCheck("has_a_value", Check.AnyPresent("low", "typical", "high"));
        builder.HasCheck("range_in_order", Check.InOrder(Dialect, "low", "typical", "high"));
        builder.HasCheck("percent_in_range", Check.Between(Dialect, 0, 100, "low", "typical", "high"));
    }
}
