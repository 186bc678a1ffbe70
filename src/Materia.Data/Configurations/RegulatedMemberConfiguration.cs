using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>What every table of members has: an identity by which the member is recognised, and a factor.</summary>
/// <typeparam name="T">The row.</typeparam>
internal abstract class RegulatedMemberConfiguration<T>(SqlDialect dialect) : ContentConfiguration<T>(dialect)
    where T : RegulatedMemberRow
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<T> builder)
    {
        base.Configure(builder);
        builder.HasOne<IngredientRow>().WithMany()
            .HasForeignKey(r => new { r.Release, r.MemberIngredient }).OnDelete(DeleteBehavior.NoAction);
        builder.HasCheck("name_not_blank", Check.NotBlank("name"));
        builder.HasCheck("has_an_identity", Check.AnyPresent("cas", "inci_name", "member_ingredient"));
        builder.HasCheck("cas_is_valid", Dialect.IsCas("cas"));
        builder.HasCheck("factor_is_positive", $"{Dialect.Number("factor")} > 0");
    }
}
