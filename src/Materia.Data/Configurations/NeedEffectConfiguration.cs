using Materia.Catalogue.Needs;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of what follows from needs: a target has a property, a range and a weight, a preference or exclusion names a set.</summary>
internal sealed class NeedEffectConfiguration(SqlDialect dialect) : StatementConfiguration<NeedEffectRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<NeedEffectRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Need, r.Ordinal });
        base.Configure(builder);
        builder.HasOne<NeedRow>().WithMany().HasForeignKey(r => new { r.Release, r.Need }).OnDelete(DeleteBehavior.Cascade);
        builder.HasOne<FattyAcidRow>().WithMany().HasForeignKey(r => new { r.Release, r.Acid }).OnDelete(DeleteBehavior.NoAction);
        builder.HasCheck("kind_is_known", Check.IsWord<NeedEffectKind>("kind"));
        builder.HasCheck("property_is_known", Check.IsWord<TargetProperty>("aimed_property"));
        builder.HasCheck("target_has_property", "(kind = 'target') = (aimed_property IS NOT NULL)");
        builder.HasCheck("target_has_weight", "(kind = 'target') = (weight IS NOT NULL)");
        builder.HasCheck("target_has_range", "(kind = 'target') = (low IS NOT NULL OR high IS NOT NULL)");
        builder.HasCheck("acid_of_fatty_acid", "(acid IS NOT NULL) = (aimed_property IS NOT NULL AND aimed_property = 'fatty-acid')");
        builder.HasCheck("scope_where_needed", "(scope IS NOT NULL) = (kind IN ('prefer', 'avoid', 'exclude'))");
        builder.HasCheck("range_in_order", $"{Dialect.Number("low")} <= {Dialect.Number("high")}");
        builder.HasCheck("weight_in_range", Check.Between(Dialect, 0, 10, "weight"));
        builder.HasCheck("reason_not_blank", Check.NotBlank("reason"));
    }
}
