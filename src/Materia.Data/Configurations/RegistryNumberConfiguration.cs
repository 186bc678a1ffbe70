using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of CAS and EC numbers.</summary>
internal sealed class RegistryNumberConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<RegistryNumberRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<RegistryNumberRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("registry_is_known", Check.IsWord<Registry>("registry"));
        builder.HasCheck("cas_is_valid", $"registry <> 'cas' OR ({Dialect.IsCas("number")})");
        builder.HasCheck("ec_is_valid", $"registry <> 'ec' OR ({Dialect.IsEc("number")})");
    }
}
