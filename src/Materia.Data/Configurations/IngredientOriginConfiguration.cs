using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of origins; one for an ingredient at most.</summary>
internal sealed class IngredientOriginConfiguration(SqlDialect dialect) : StatementConfiguration<IngredientOriginRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<IngredientOriginRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient });
        base.Configure(builder);
        builder.HasCheck("kingdom_is_known", Check.IsWord<OriginKind>("kingdom"));
    }
}
