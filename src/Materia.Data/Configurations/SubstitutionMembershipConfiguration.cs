using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of members of substitution groups; an ingredient is a member once, and a group has one reference at most.</summary>
internal sealed class SubstitutionMembershipConfiguration(SqlDialect dialect) : IngredientStatementConfiguration<SubstitutionMembershipRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<SubstitutionMembershipRow> builder)
    {
        base.Configure(builder);
        builder.HasOne<SubstitutionGroupRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.SubstitutionGroup }).OnDelete(DeleteBehavior.NoAction);
        builder.HasIndex(r => new { r.Release, r.SubstitutionGroup, r.Ingredient }).IsUnique();
        builder.HasIndex(r => new { r.Release, r.SubstitutionGroup }).HasFilter("is_reference").IsUnique();
        builder.HasCheck("swap_ratio_is_positive", $"{Dialect.Number("swap_ratio")} > 0");
        builder.HasCheck("reference_replaces_itself", $"NOT is_reference OR {Dialect.Number("swap_ratio")} = 1");
        builder.HasCheck("text_not_blank", Check.NotBlank("text"));
    }
}
