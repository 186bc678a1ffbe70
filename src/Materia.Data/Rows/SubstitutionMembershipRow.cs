using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>That an ingredient is a member of a substitution group.</summary>
internal sealed class SubstitutionMembershipRow : IngredientStatementRow
{
    public SubstitutionMembershipRow(RowPlace place, SubstitutionMembership membership)
        : base(place, membership)
    {
        SubstitutionGroup = membership.Group;
        IsReference = membership.Reference;
        SwapRatio = membership.SwapRatio;
        Text = membership.Text;
    }

    /// <summary>For the reader of the database.</summary>
    private SubstitutionMembershipRow()
    {
    }

    /// <inheritdoc cref="SubstitutionMembership.Group"/>
    public string SubstitutionGroup { get; private init; } = "";

    /// <inheritdoc cref="SubstitutionMembership.Reference"/>
    public bool IsReference { get; private init; }

    /// <inheritdoc cref="SubstitutionMembership.SwapRatio"/>
    public decimal? SwapRatio { get; private init; }

    /// <inheritdoc cref="SubstitutionMembership.Text"/>
    public string Text { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public SubstitutionMembership ToRecord() => new()
    {
        Group = SubstitutionGroup,
        Reference = IsReference,
        SwapRatio = SwapRatio,
        Text = Text,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
