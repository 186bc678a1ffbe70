using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of sources.</summary>
internal sealed class SourceConfiguration(SqlDialect dialect) : ContentConfiguration<SourceRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<SourceRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));
        builder.HasCheck("kind_is_known", Check.IsWord<SourceKind>("kind"));
        builder.HasCheck("title_not_blank", Check.NotBlank("title"));
    }
}
