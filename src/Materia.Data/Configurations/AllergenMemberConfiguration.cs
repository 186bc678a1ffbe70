using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of what counts towards allergens.</summary>
internal sealed class AllergenMemberConfiguration(SqlDialect dialect) : RegulatedMemberConfiguration<AllergenMemberRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<AllergenMemberRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Allergen, r.Ordinal });
        base.Configure(builder);
        builder.HasOne<AllergenRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.Allergen }).OnDelete(DeleteBehavior.Cascade);
    }
}
