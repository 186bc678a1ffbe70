using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>What every table of a release's content has: the release's number, with which the row goes.</summary>
/// <typeparam name="T">The row.</typeparam>
internal abstract class ContentConfiguration<T>(SqlDialect dialect) : IEntityTypeConfiguration<T>
    where T : ContentRow
{
    /// <summary>How the engine writes conditions.</summary>
    protected SqlDialect Dialect { get; } = dialect;

    /// <inheritdoc/>
    public virtual void Configure(EntityTypeBuilder<T> builder)
    {
        builder.HasOne<ReleaseRow>().WithMany().HasForeignKey(r => r.Release).OnDelete(DeleteBehavior.Cascade);
        if (typeof(IIngredientPart).IsAssignableFrom(typeof(T)))
        {
            builder.HasOne<IngredientRow>().WithMany()
                .HasForeignKey(nameof(ContentRow.Release), nameof(IIngredientPart.Ingredient))
                .OnDelete(DeleteBehavior.Cascade);
        }
    }
}
