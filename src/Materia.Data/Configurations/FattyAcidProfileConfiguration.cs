using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of fatty-acid profiles.</summary>
internal sealed class FattyAcidProfileConfiguration(SqlDialect dialect) : ContentConfiguration<FattyAcidProfileRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<FattyAcidProfileRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient, r.Ordinal });
        base.Configure(builder);
        builder.HasCheck("kind_is_known", Check.IsWord<ProfileKind>("kind"));
        builder.HasCheck("part_is_known", Check.IsWord<ProfilePart>("part"));
        builder.HasCheck("label_not_blank", Check.NotBlank("label"));

        // Computations use one sample of the acids and one of the alcohols.
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.Part }).HasFilter("used").IsUnique();
    }
}
