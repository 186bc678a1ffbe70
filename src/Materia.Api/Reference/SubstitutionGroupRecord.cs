using Materia.Catalogue;

namespace Materia.Api.Reference;

/// <summary>A substitution group with its members.</summary>
public sealed record SubstitutionGroupRecord
{
    /// <summary>The key, such as <c>clay-mask</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>The job that its members share, and what to watch when one takes another's place.</summary>
    public required string Description { get; init; }

    /// <summary>How it was seen.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>The key of its source.</summary>
    public required string Source { get; init; }

    /// <summary>Where in the source.</summary>
    public string? Locator { get; init; }

    /// <summary>What a reader must know to use it.</summary>
    public string? Note { get; init; }

    /// <summary>The members: the reference first, the others by id.</summary>
    public required IReadOnlyList<SubstitutionMember> Members { get; init; }

    /// <summary>All groups of <paramref name="release"/>, in the order of the table.</summary>
    public static IReadOnlyList<SubstitutionGroupRecord> All(Release release)
    {
        var members = release.Content.Ingredients
            .SelectMany(i => i.SubstitutionGroups.Select(m => (m.Group, Member: SubstitutionMember.Of(i, m))))
            .ToLookup(m => m.Group, m => m.Member, StringComparer.Ordinal);
        return [.. release.Content.SubstitutionGroups.Select(group => new SubstitutionGroupRecord
        {
            Id = group.Id,
            Name = group.Name,
            Description = group.Description,
            Evidence = group.Evidence,
            Source = group.Source,
            Locator = group.Locator,
            Note = group.Note,
            Members = [.. members[group.Id].OrderByDescending(m => m.Reference).ThenBy(m => m.Id, StringComparer.Ordinal)],
        })];
    }
}

/// <summary>A member of a substitution group.</summary>
public sealed record SubstitutionMember
{
    /// <summary>The ingredient's id.</summary>
    public required string Id { get; init; }

    /// <summary>Its common name.</summary>
    public required string Name { get; init; }

    /// <summary>True for the member that the others are compared with.</summary>
    public required bool Reference { get; init; }

    /// <summary>Mass of it in place of one part of the reference [1]; absent where none is known.</summary>
    public decimal? SwapRatio { get; init; }

    /// <summary>What changes when it takes the reference's place; for the reference, what it brings.</summary>
    public required string Text { get; init; }

    /// <summary>How that was seen.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>The key of its source.</summary>
    public required string Source { get; init; }

    /// <summary>An ingredient as a member of a group.</summary>
    public static SubstitutionMember Of(Ingredient ingredient, SubstitutionMembership membership) => new()
    {
        Id = ingredient.Id,
        Name = ingredient.CommonName(),
        Reference = membership.Reference,
        SwapRatio = membership.SwapRatio,
        Text = membership.Text,
        Evidence = membership.Evidence,
        Source = membership.Source,
    };
}
