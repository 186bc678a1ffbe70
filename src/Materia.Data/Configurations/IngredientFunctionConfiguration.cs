using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of functions.</summary>
internal sealed class IngredientFunctionConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<IngredientFunctionRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<IngredientFunctionRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("function_is_kebab_case", Dialect.IsKebabCase("function"));
    }
}
