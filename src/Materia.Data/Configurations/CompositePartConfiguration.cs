using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of parts of mixtures; a part stands once in a mixture, and nothing is a part of itself.</summary>
internal sealed class CompositePartConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<CompositePartRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<CompositePartRow> builder)
    {
        base.Configure(builder);
        builder.HasOne<IngredientRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.PartIngredient }).OnDelete(DeleteBehavior.NoAction);
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.InciName }).IsUnique();
        builder.HasCheck("inci_name_not_blank", Check.NotBlank("inci_name"));
        builder.HasCheck("part_is_another_ingredient", "part_ingredient <> ingredient");
        builder.HasCheck("cas_is_valid", Dialect.IsCas("cas"));
        builder.HasCheck("range_in_order", Check.InOrder(Dialect, "low", "typical", "high"));
        builder.HasCheck("percent_in_range", Check.Between(Dialect, 0, 100, "low", "typical", "high"));
    }
}
