using Materia.Catalogue;

namespace Materia.Api.Reference;

/// <summary>A release in numbers.</summary>
public sealed record ReleaseSummary
{
    /// <summary>The number; releases count up from 1.</summary>
    public required int Number { get; init; }

    /// <summary>When it was published.</summary>
    public required DateTimeOffset Published { get; init; }

    /// <summary>SHA-256 of the content, in hexadecimal: equal content, equal checksum.</summary>
    public required string Checksum { get; init; }

    /// <summary>How much it holds.</summary>
    public required ReleaseCounts Counts { get; init; }

    /// <summary>Sums up <paramref name="release"/>.</summary>
    public static ReleaseSummary Of(Release release) => new()
    {
        Number = release.Number,
        Published = release.Published,
        Checksum = release.Checksum,
        Counts = new()
        {
            Ingredients = release.Content.Ingredients.Count,
            IngredientsByKind = release.Content.Ingredients
                .CountBy(i => i.Kind)
                .OrderBy(k => k.Key)
                .ToDictionary(k => KebabCase<IngredientKind>.Word(k.Key), k => k.Value),
            Sources = release.Content.Sources.Count,
            FattyAcids = release.Content.FattyAcids.Count,
            Uses = release.Content.Uses.Count,
            SubstitutionGroups = release.Content.SubstitutionGroups.Count,
            Limits = release.Content.Limits.Count,
            Allergens = release.Content.Allergens.Count,
            Needs = release.Content.Needs.Count,
        },
    };
}

/// <summary>How much a release holds.</summary>
public sealed record ReleaseCounts
{
    /// <summary>Ingredients.</summary>
    public required int Ingredients { get; init; }

    /// <summary>Ingredients of each kind.</summary>
    public required IReadOnlyDictionary<string, int> IngredientsByKind { get; init; }

    /// <summary>Sources.</summary>
    public required int Sources { get; init; }

    /// <summary>Fatty acids and alcohols.</summary>
    public required int FattyAcids { get; init; }

    /// <summary>Product types.</summary>
    public required int Uses { get; init; }

    /// <summary>Substitution groups.</summary>
    public required int SubstitutionGroups { get; init; }

    /// <summary>Limits.</summary>
    public required int Limits { get; init; }

    /// <summary>Fragrance allergens.</summary>
    public required int Allergens { get; init; }

    /// <summary>Needs.</summary>
    public required int Needs { get; init; }
}
