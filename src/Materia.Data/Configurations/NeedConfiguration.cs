using Materia.Catalogue.Needs;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of needs.</summary>
internal sealed class NeedConfiguration(SqlDialect dialect) : StatementConfiguration<NeedRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<NeedRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));
        builder.HasCheck("subject_is_known", Check.IsWord<NeedSubject>("subject"));
        builder.HasCheck("name_not_blank", Check.NotBlank("name"));
        builder.HasCheck("text_not_blank", Check.NotBlank("text"));
        builder.HasCheck("opposes_another", "opposes <> id");
    }
}
