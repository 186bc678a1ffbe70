using Materia.Catalogue;

namespace Materia.Seed.Reading;

/// <summary>What could be read of a seed directory, each record with its place.</summary>
internal sealed record LoadedSeed
{
    /// <summary>The ingredients, in the order of their files.</summary>
    public required IReadOnlyList<Placed<Ingredient>> Ingredients { get; init; }

    /// <summary>The sources, in the order of their files.</summary>
    public required IReadOnlyList<Placed<Source>> Sources { get; init; }

    /// <summary>The fatty acids and alcohols, in the order of the table.</summary>
    public required IReadOnlyList<Placed<FattyAcid>> FattyAcids { get; init; }

    /// <summary>The product types, in the order of the table.</summary>
    public required IReadOnlyList<Placed<ProductUse>> Uses { get; init; }

    /// <summary>The substitution groups, in the order of the table.</summary>
    public required IReadOnlyList<Placed<SubstitutionGroup>> SubstitutionGroups { get; init; }

    /// <summary>The limits and allergens.</summary>
    public required LoadedRegulation Regulation { get; init; }

    /// <summary>The needs.</summary>
    public required LoadedNeeds Needs { get; init; }

    /// <summary>The files of sources that could not be read, by the key that their name gives; naming such a source is no fault of its own.</summary>
    public required IReadOnlySet<string> UnreadSources { get; init; }

    /// <summary>True when every ingredient and every row could be read, so that what nobody names is known to be unused.</summary>
    public required bool IsComplete { get; init; }

    /// <summary>True when every row of the fatty-acid table could be read, so that a symbol it lacks is known to be unknown.</summary>
    public required bool HasFattyAcids { get; init; }

    /// <summary>True when every row of the table of product types could be read, so that a key it lacks is known to be unknown.</summary>
    public required bool HasUses { get; init; }

    /// <summary>True when every row of the table of substitution groups could be read, so that a key it lacks is known to be unknown.</summary>
    public required bool HasSubstitutionGroups { get; init; }

    /// <summary>The files of ingredients that could not be read, by the id that their name gives; naming such an ingredient is no fault of its own.</summary>
    public required IReadOnlySet<string> UnreadIngredients { get; init; }
}
