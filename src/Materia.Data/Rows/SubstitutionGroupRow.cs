using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A group of ingredients that can stand in for each other.</summary>
internal sealed class SubstitutionGroupRow : StatementRow
{
    public SubstitutionGroupRow(int release, int ordinal, SubstitutionGroup group)
        : base(release, ordinal, group)
    {
        Id = group.Id;
        Name = group.Name;
        Description = group.Description;
    }

    /// <summary>For the reader of the database.</summary>
    private SubstitutionGroupRow()
    {
    }

    /// <inheritdoc cref="SubstitutionGroup.Id"/>
    public string Id { get; private init; } = "";

    /// <inheritdoc cref="SubstitutionGroup.Name"/>
    public string Name { get; private init; } = "";

    /// <inheritdoc cref="SubstitutionGroup.Description"/>
    public string Description { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public SubstitutionGroup ToRecord() => new()
    {
        Id = Id,
        Name = Name,
        Description = Description,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
