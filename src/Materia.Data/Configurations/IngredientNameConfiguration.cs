using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of names.</summary>
internal sealed class IngredientNameConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<IngredientNameRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<IngredientNameRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("kind_is_known", Check.IsWord<NameKind>("kind"));
        builder.HasCheck("text_not_blank", Check.NotBlank("text"));

        // One name heads the record.
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.Kind }).HasFilter("kind = 'common'").IsUnique();
    }
}
