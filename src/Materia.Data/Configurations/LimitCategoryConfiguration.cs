using Materia.Catalogue.Regulated;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the categories of the fragrance standards that limits bind.</summary>
internal sealed class LimitCategoryConfiguration(SqlDialect dialect) : LimitPartConfiguration<LimitCategoryRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<LimitCategoryRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.RegulatedLimit, r.IfraCategory });
        base.Configure(builder);
        builder.HasCheck("ifra_category_is_known", Check.IsOneOf("ifra_category", FragranceCategory.All));
    }
}
