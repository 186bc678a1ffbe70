using Materia.Catalogue.Regulated;

namespace Materia.Data.Rows;

/// <summary>What counts towards a limit.</summary>
internal sealed class LimitMemberRow : RegulatedMemberRow
{
    public LimitMemberRow(int release, int ordinal, string limit, RegulatedMember member)
        : base(release, ordinal, member) => RegulatedLimit = limit;

    /// <summary>For the reader of the database.</summary>
    private LimitMemberRow()
    {
    }

    /// <summary>The key of the limit.</summary>
    public string RegulatedLimit { get; private init; } = "";
}
