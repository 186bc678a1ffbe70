using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of notes on handling; one for an ingredient, at most, is about its phase, and that one names it.</summary>
internal sealed class HandlingNoteConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<HandlingNoteRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<HandlingNoteRow> builder)
    {
        base.Configure(builder);
        builder.HasCheck("topic_is_known", Check.IsWord<HandlingTopic>("topic"));
        builder.HasCheck("phase_is_known", Check.IsWord<ProcessPhase>("phase"));
        builder.HasCheck("phase_goes_with_its_topic", "(topic = 'phase') = (phase IS NOT NULL)");
        builder.HasCheck("text_not_blank", Check.NotBlank("text"));
        builder.HasIndex(r => new { r.Release, r.Ingredient, r.Topic }).HasFilter("topic = 'phase'").IsUnique();
    }
}
