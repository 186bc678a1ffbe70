using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of constituents; one without a figure is known to be there.</summary>
internal sealed class ConstituentConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<ConstituentRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<ConstituentRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("substance_not_blank", Check.NotBlank("substance"));
        builder.HasCheck("cas_is_valid", Dialect.IsCas("cas"));
        builder.HasCheck("range_in_order", Check.InOrder(Dialect, "low", "typical", "high"));
        builder.HasCheck("percent_in_range", Check.Between(Dialect, 0, 100, "low", "typical", "high"));

        // Computations use one statement of a substance.
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.Substance }).HasFilter("used").IsUnique();
    }
}
