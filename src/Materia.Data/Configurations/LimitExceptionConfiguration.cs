using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the ingredients that limits do not mean.</summary>
internal sealed class LimitExceptionConfiguration(SqlDialect dialect) : LimitPartConfiguration<LimitExceptionRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<LimitExceptionRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.RegulatedLimit, r.ExceptIngredient });
        base.Configure(builder);
        builder.HasOne<IngredientRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.ExceptIngredient }).OnDelete(DeleteBehavior.NoAction);
    }
}
