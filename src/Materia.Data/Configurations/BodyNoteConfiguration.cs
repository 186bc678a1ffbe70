using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of effects on hair and skin.</summary>
internal sealed class BodyNoteConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<BodyNoteRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<BodyNoteRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("subject_is_known", Check.IsWord<BodySubject>("subject"));
        builder.HasCheck("text_not_blank", Check.NotBlank("text"));
    }
}
