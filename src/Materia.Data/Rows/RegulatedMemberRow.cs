using Materia.Catalogue.Regulated;

namespace Materia.Data.Rows;

/// <summary>The columns of what counts towards a limit or an allergen.</summary>
internal abstract class RegulatedMemberRow : ContentRow
{
    /// <summary>For the reader of the database.</summary>
    protected RegulatedMemberRow()
    {
    }

    protected RegulatedMemberRow(int release, int ordinal, RegulatedMember member)
        : base(release, ordinal)
    {
        Name = member.Name;
        Cas = member.Cas;
        InciName = member.InciName;
        MemberIngredient = member.Ingredient;
        Factor = member.Factor;
    }

    /// <inheritdoc cref="RegulatedMember.Name"/>
    public string Name { get; private init; } = "";

    /// <inheritdoc cref="RegulatedMember.Cas"/>
    public string? Cas { get; private init; }

    /// <inheritdoc cref="RegulatedMember.InciName"/>
    public string? InciName { get; private init; }

    /// <inheritdoc cref="RegulatedMember.Ingredient"/>
    public string? MemberIngredient { get; private init; }

    /// <inheritdoc cref="RegulatedMember.Factor"/>
    public decimal Factor { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public RegulatedMember ToRecord() => new()
    {
        Name = Name,
        Cas = Cas,
        InciName = InciName,
        Ingredient = MemberIngredient,
        Factor = Factor,
    };
}
