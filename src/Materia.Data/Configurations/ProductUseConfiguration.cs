using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of types of product.</summary>
internal sealed class ProductUseConfiguration(SqlDialect dialect) : StatementConfiguration<ProductUseRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<ProductUseRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));
        builder.HasCheck("exposure_is_known", Check.IsWord<Exposure>("exposure"));
        builder.HasCheck("site_is_known", Check.IsWord<BodySite>("site"));
        builder.HasCheck("name_not_blank", Check.NotBlank("name"));
        builder.HasCheck("ifra_category_is_known", Check.IsOneOf("ifra_category", FragranceCategory.All));
        builder.HasCheck("caution_not_blank", Check.NotBlank("caution"));
    }
}
