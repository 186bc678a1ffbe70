using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of compositions by triacylglycerol.</summary>
internal sealed class TriacylglycerolProfileConfiguration(SqlDialect dialect) : ContentConfiguration<TriacylglycerolProfileRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<TriacylglycerolProfileRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.Ingredient, r.Ordinal });
        base.Configure(builder);
        builder.HasCheck("label_not_blank", Check.NotBlank("label"));

        // Computations use one composition of an ingredient.
        builder.HasIndex(r => new { r.Release, r.Ingredient }).HasFilter("used").IsUnique();
    }
}
