using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of grades of the rabbit-ear assay, 0 to 5.</summary>
internal sealed class ComedogenicNoteConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<ComedogenicNoteRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<ComedogenicNoteRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("grades_in_range", "low >= 0 AND low <= high AND high <= 5");
        builder.HasCheck("irritancy_in_range", "irritancy BETWEEN 0 AND 5");
        builder.HasCheck("tested_not_blank", Check.NotBlank("tested"));
    }
}
