using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of figures of properties.</summary>
internal sealed class PropertyFigureConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<PropertyFigureRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<PropertyFigureRow> builder)
    {
        base.Configure(builder);

        // The properties grow with the science: their form is held here, the words by the reader of the seed files.
        builder.HasCheck("property_is_kebab_case", Dialect.IsKebabCase("property"));
        builder.HasCheck("unit_not_blank", Check.NotBlank("unit"));
        builder.HasCheck("has_a_value", Check.AnyPresent("low", "typical", "high"));
        builder.HasCheck("range_in_order", Check.InOrder(Dialect, "low", "typical", "high"));
        builder.HasCheck("percent_in_range", $"unit <> '{Units.Percent}' OR ({Check.Between(Dialect, 0, 100, "low", "typical", "high")})");
    }
}
