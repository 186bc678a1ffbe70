using Materia.Catalogue.Regulated;
using Materia.Seed.Tables;

namespace Materia.Seed.Reading;

/// <summary>What could be read of the tables of limits and allergens, each row with its place.</summary>
internal sealed record LoadedRegulation
{
    /// <summary>The limits, without their members, in the order of the table.</summary>
    public required TableRows<Limit> Limits { get; init; }

    /// <summary>What counts towards the limits.</summary>
    public required TableRows<OwnedMember> LimitMembers { get; init; }

    /// <summary>The allergens, without their members, in the order of the table.</summary>
    public required TableRows<Allergen> Allergens { get; init; }

    /// <summary>What counts towards the allergens.</summary>
    public required TableRows<OwnedMember> AllergenMembers { get; init; }

    /// <summary>The paths of the four tables.</summary>
    public static IReadOnlyList<string> Paths { get; } =
        [LimitTable.Path, LimitTable.MembersPath, AllergenTable.Path, AllergenTable.MembersPath];

    /// <summary>True when every row of the four tables could be read.</summary>
    public bool IsComplete => Limits.IsComplete && LimitMembers.IsComplete && Allergens.IsComplete && AllergenMembers.IsComplete;

    /// <summary>Reads the four tables; what cannot be read is added to <paramref name="faults"/>.</summary>
    public static LoadedRegulation Load(string directory, FaultList faults) => new()
    {
        Limits = TableFile.Read(directory, LimitTable.Path, LimitTable.Columns, LimitTable.Row, faults),
        LimitMembers = Members(directory, LimitTable.MembersPath, LimitTable.Owner, faults),
        Allergens = TableFile.Read(directory, AllergenTable.Path, AllergenTable.Columns, AllergenTable.Row, faults),
        AllergenMembers = Members(directory, AllergenTable.MembersPath, AllergenTable.Owner, faults),
    };

    /// <summary>The limits with their members.</summary>
    public IReadOnlyList<Limit> WholeLimits()
    {
        var members = OwnedMember.ByOwner(LimitMembers.Rows.Select(m => m.Value));
        return [.. Limits.Rows.Select(l => l.Value with { Members = [.. members[l.Value.Id]] })];
    }

    /// <summary>The allergens with their members.</summary>
    public IReadOnlyList<Allergen> WholeAllergens()
    {
        var members = OwnedMember.ByOwner(AllergenMembers.Rows.Select(m => m.Value));
        return [.. Allergens.Rows.Select(a => a.Value with { Members = [.. members[a.Value.Id]] })];
    }

    private static TableRows<OwnedMember> Members(string directory, string path, string owner, FaultList faults) =>
        TableFile.Read(directory, path, OwnedMember.Columns(owner), row => OwnedMember.Row(row, owner), faults);
}
