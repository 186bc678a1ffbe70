using Materia.Catalogue;
using Materia.Data.Engines;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Materia.Data.Configurations;

/// <summary>The table of the parts of the body that limits bind.</summary>
internal sealed class LimitSiteConfiguration(SqlDialect dialect) : LimitPartConfiguration<LimitSiteRow>(dialect)
{
    /// <inheritdoc/>
    public override void Configure(EntityTypeBuilder<LimitSiteRow> builder)
    {
        builder.HasKey(r => new { r.Release, r.RegulatedLimit, r.Site });
        base.Configure(builder);
        builder.HasCheck("site_is_known", Check.IsWord<BodySite>("site"));
    }
}
