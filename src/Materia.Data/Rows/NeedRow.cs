using Materia.Catalogue.Needs;

namespace Materia.Data.Rows;

/// <summary>A need; what follows from it are rows of their own.</summary>
internal sealed class NeedRow : StatementRow
{
    public NeedRow(int release, int ordinal, Need need)
        : base(release, ordinal, need)
    {
        Id = need.Id;
        Name = need.Name;
        Subject = need.Subject;
        Text = need.Text;
        Opposes = need.Opposes;
    }

    /// <summary>For the reader of the database.</summary>
    private NeedRow()
    {
    }

    /// <inheritdoc cref="Need.Id"/>
    public string Id { get; private init; } = "";

    /// <inheritdoc cref="Need.Name"/>
    public string Name { get; private init; } = "";

    /// <inheritdoc cref="Need.Subject"/>
    public NeedSubject Subject { get; private init; }

    /// <inheritdoc cref="Need.Text"/>
    public string Text { get; private init; } = "";

    /// <inheritdoc cref="Need.Opposes"/>
    public string? Opposes { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    /// <param name="effects">What follows from it.</param>
    public Need ToRecord(IReadOnlyList<NeedEffect> effects) => new()
    {
        Id = Id,
        Name = Name,
        Subject = Subject,
        Text = Text,
        Opposes = Opposes,
        Effects = effects,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
