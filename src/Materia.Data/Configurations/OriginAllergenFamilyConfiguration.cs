using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the families of allergens that an origin belongs to.</summary>
internal sealed class OriginAllergenFamilyConfiguration(SqlDialect dialect) : ContentConfiguration<OriginAllergenFamilyRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<OriginAllergenFamilyRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient, r.Family });
        builder.HasOne<ReleaseRow>().WithMany().HasForeignKey(r => r.Release).OnDelete(DeleteBehavior.Cascade);
        builder.HasOne<IngredientOriginRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.Ingredient }).OnDelete(DeleteBehavior.Cascade);
        builder.HasCheck("family_is_known", Check.IsWord<AllergenFamily>("family"));
    }
}
