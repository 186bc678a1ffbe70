using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of charges; one for an ingredient at most.</summary>
internal sealed class IngredientChargeConfiguration(SqlDialect dialect) : StatementConfiguration<IngredientChargeRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<IngredientChargeRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient });
        base.Configure(builder);
        builder.HasCheck("charge_is_known", Check.IsWord<IonicCharge>("charge"));
    }
}
