using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of fragrance allergens; a name on the label is one allergen.</summary>
internal sealed class AllergenConfiguration(SqlDialect dialect) : StatementConfiguration<AllergenRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<AllergenRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasIndex(r => new { r.Release, r.DeclarationName }).IsUnique();
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));
        builder.HasCheck("declaration_name_not_blank", Check.NotBlank("declaration_name"));
        builder.HasCheck("thresholds_in_range", Check.Between(Dialect, 0, 100, "leave_on_threshold", "rinse_off_threshold"));
        builder.HasCheck("dates_together", "(new_products_until IS NULL) = (old_stock_until IS NULL)");
        builder.HasCheck("dates_in_order", "new_products_until <= old_stock_until");
    }
}
