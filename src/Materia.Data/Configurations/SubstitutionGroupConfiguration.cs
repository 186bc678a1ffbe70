using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of substitution groups.</summary>
internal sealed class SubstitutionGroupConfiguration(SqlDialect dialect) : StatementConfiguration<SubstitutionGroupRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<SubstitutionGroupRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));
        builder.HasCheck("name_not_blank", Check.NotBlank("name"));
        builder.HasCheck("description_not_blank", Check.NotBlank("description"));
    }
}
