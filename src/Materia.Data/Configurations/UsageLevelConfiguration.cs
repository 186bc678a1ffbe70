using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of usual shares; a type of product stands once for an ingredient.</summary>
internal sealed class UsageLevelConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<UsageLevelRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<UsageLevelRow> builder)
    {
        base.Configure(builder);
        builder.HasOne<ProductUseRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.ProductUse }).OnDelete(DeleteBehavior.NoAction);
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.ProductUse }).IsUnique();
        builder.HasCheck("has_a_value", Check.AnyPresent("low", "typical", "high"));
        builder.HasCheck("range_in_order", Check.InOrder(Dialect, "low", "typical", "high"));
        builder.HasCheck("percent_in_range", Check.Between(Dialect, 0, 100, "low", "typical", "high"));
    }
}
