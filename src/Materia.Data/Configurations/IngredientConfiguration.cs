using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of ingredients.</summary>
internal sealed class IngredientConfiguration(SqlDialect dialect) : ContentConfiguration<IngredientRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<IngredientRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));

        // The kinds grow with the catalogue: their form is held here, the words by the reader of the seed files.
        builder.HasCheck("kind_is_kebab_case", Dialect.IsKebabCase("kind"));
    }
}
