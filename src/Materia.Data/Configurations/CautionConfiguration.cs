using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of cautions.</summary>
internal sealed class CautionConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<CautionRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<CautionRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("text_not_blank", Check.NotBlank("text"));
    }
}
