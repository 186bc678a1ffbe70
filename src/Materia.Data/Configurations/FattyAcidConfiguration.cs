using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of fatty acids and fatty alcohols.</summary>
internal sealed class FattyAcidConfiguration(SqlDialect dialect) : StatementConfiguration<FattyAcidRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<FattyAcidRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Symbol });
        base.Configure(builder);
        builder.HasCheck("symbol_not_blank", Check.NotBlank("symbol"));
        builder.HasCheck("cas_is_valid", Dialect.IsCas("cas"));
        builder.HasCheck("counts_in_range", "carbons > 0 AND double_bonds BETWEEN 0 AND carbons AND hydroxyls >= 0");
        builder.HasCheck("molar_mass_is_positive", $"{Dialect.Number("molar_mass")} > 0");
    }
}
