using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>What every table of statements about one ingredient has: a place in one of the ingredient's lists.</summary>
/// <typeparam name="T">The row.</typeparam>
internal abstract class IngredientStatementConfiguration<T>(SqlDialect dialect) : StatementConfiguration<T>(dialect)
    where T : IngredientStatementRow
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<T> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient, r.Ordinal });
        base.Configure(builder);
    }
}
