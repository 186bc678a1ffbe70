using Materia.Catalogue.Regulated;

namespace Materia.Data.Rows;

/// <summary>What counts towards an allergen.</summary>
internal sealed class AllergenMemberRow : RegulatedMemberRow
{
    public AllergenMemberRow(int release, int ordinal, string allergen, RegulatedMember member)
        : base(release, ordinal, member) => Allergen = allergen;

    /// <summary>For the reader of the database.</summary>
    private AllergenMemberRow()
    {
    }

    /// <summary>The key of the allergen.</summary>
    public string Allergen { get; private init; } = "";
}
