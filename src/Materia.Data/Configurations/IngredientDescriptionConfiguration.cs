using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of descriptions; one for an ingredient at most.</summary>
internal sealed class IngredientDescriptionConfiguration(SqlDialect dialect) : StatementConfiguration<IngredientDescriptionRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<IngredientDescriptionRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient });
        base.Configure(builder);
        builder.HasCheck("text_not_blank", Check.NotBlank("text"));
    }
}
