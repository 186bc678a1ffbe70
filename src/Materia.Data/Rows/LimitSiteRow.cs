using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A part of the body that a limit binds products for.</summary>
internal sealed class LimitSiteRow : LimitPartRow
{
    public LimitSiteRow(int release, int ordinal, string limit, BodySite site)
        : base(release, ordinal, limit) => Site = site;

    /// <summary>For the reader of the database.</summary>
    private LimitSiteRow()
    {
    }

    /// <summary>The part of the body.</summary>
    public BodySite Site { get; private init; }
}
