using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of limits.</summary>
internal sealed class RegulatedLimitConfiguration(SqlDialect dialect) : StatementConfiguration<RegulatedLimitRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<RegulatedLimitRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));
        builder.HasCheck("authority_is_known", Check.IsWord<Authority>("authority"));
        builder.HasCheck("kind_is_known", Check.IsWord<LimitKind>("kind"));
        builder.HasCheck("exposure_is_known", Check.IsWord<Exposure>("exposure"));
        builder.HasCheck("substance_not_blank", Check.NotBlank("substance"));
        builder.HasCheck("scope_text_not_blank", Check.NotBlank("scope_text"));
        builder.HasCheck("max_percent_in_range", $"{Dialect.Number("max_percent")} > 0 AND {Dialect.Number("max_percent")} <= 100");
        builder.HasCheck("below_needs_a_share", "NOT stays_below OR max_percent IS NOT NULL");
        builder.HasCheck("ratio_needs_a_share", "ratio_group IS NULL OR max_percent IS NOT NULL");
        builder.HasCheck("warning_above_in_range", Check.Between(Dialect, 0, 100, "warning_above"));
        builder.HasCheck("warning_above_needs_words", "warning_above IS NULL OR warning IS NOT NULL");
        builder.HasCheck("dates_in_order", "applies_from <= old_stock_until");
    }
}
