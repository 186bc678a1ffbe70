using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of former ids; each leads to one ingredient.</summary>
internal sealed class FormerIdConfiguration(SqlDialect dialect) : ContentConfiguration<FormerIdRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<FormerIdRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Id });
        base.Configure(builder);
        builder.HasCheck("id_is_kebab_case", Dialect.IsKebabCase("id"));
        builder.HasCheck("id_is_not_the_present_one", "id <> ingredient");
    }
}
